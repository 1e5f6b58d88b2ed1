# What a run of the tests counted, from the summary that closes it: succeeded, failed, skipped. A test host that crashes
# or has no tests is none of these but an error, and counts as a failure. Of a run without a summary: 0 0 0.
/^Test run summary:/ { split("", n) }
/^  (error|failed|succeeded|skipped): [0-9]+$/ { sub(":", "", $1); n[$1] = $2 }
END { print n["succeeded"] + 0, n["failed"] + n["error"] + 0, n["skipped"] + 0 }
