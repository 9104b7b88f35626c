# For ./check and ./prove: `step NAME COMMAND…` runs a command and times it, `count` tells of all,
# as its last line and by its exit code.
PATH=$PWD/node_modules/.bin:$PATH
passed=0
failed=0
summary=

step() {
  name=$1
  shift
  printf '\n== %s: %s\n' "$name" "$*"
  began=$(date +%s)
  if "$@"; then
    passed=$((passed + 1)) verdict=passed
  else
    failed=$((failed + 1)) verdict=FAILED
  fi
  seconds=$(($(date +%s) - began))
  printf '== %s: %s in %d s\n' "$name" "$verdict" "$seconds"
  summary=$summary$(printf '%-8s %4d s  %s' "$verdict" "$seconds" "$name")'
'
}

count() {
  printf '\n%s\n%d passed, %d failed\n' "$summary" "$passed" "$failed"
  [ "$failed" -eq 0 ]
}
