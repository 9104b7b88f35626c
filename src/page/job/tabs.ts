/** Tells the page's other tabs which job was written to here, and hears it of them. */
export function hearTabs(hear: (id: string) => void): (id: string) => void {
  if (typeof BroadcastChannel === 'undefined') return () => {};
  const channel = new BroadcastChannel('holdturn jobs');
  channel.addEventListener('message', ({ data }: MessageEvent<unknown>) => {
    if (typeof data === 'string') hear(data);
  });
  return (id) => channel.postMessage(id);
}
