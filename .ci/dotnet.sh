# Shared by the commands at the root; to be sourced, with $root set to the folder of the repository.

export DOTNET_CLI_TELEMETRY_OPTOUT=1 DOTNET_NOLOGO=1 DOTNET_CLI_UI_LANGUAGE=en

# A build is over before the runtime has won back what watching itself for hot places costs: a third of the time.
without_profile() {
  DOTNET_TieredPGO=0 "$@"
}

# Without a home to write to, dotnet keeps its own files beside the build.
if [[ ! -w ${HOME:-/nowhere} ]]; then
  export DOTNET_CLI_HOME=$root/.build/home NUGET_PACKAGES=$root/.build/packages
fi

# Ends the calling command with status 69 ("unavailable") when dotnet cannot build this repository.
require_dotnet_sdk() {
  local wanted found
  wanted=$(sed -n 's/.*"sdk".*"version": *"\([^"]*\)".*/\1/p' "$root/global.json")
  if ! command -v dotnet >/dev/null; then
    echo "Gatewright needs the .NET SDK $wanted or a later 10.0, and there is no dotnet here: https://dotnet.microsoft.com/download" >&2
    exit 69
  fi
  # dotnet itself reads global.json and fails when no SDK is new enough.
  if ! (cd "$root" && dotnet --version) >/dev/null 2>&1; then
    found=$(dotnet --list-sdks 2>/dev/null | cut -d ' ' -f 1 | paste -s -d ' ' -)
    echo "Gatewright needs the .NET SDK $wanted or a later 10.0; here is ${found:-no SDK at all}: https://dotnet.microsoft.com/download" >&2
    exit 69
  fi
}

# Builds a project or solution and says nothing unless that fails: dotnet's own quiet still sums up.
build_quietly() {
  local said status=0
  # Where the caller ends at the first command that fails, what the build said is told all the same.
  said=$(with_one_compiler dotnet build "$@" --nologo --verbosity quiet -tl:off 2>&1) || status=$?
  end_compilers
  ((status == 0)) || { echo "$said"; return 1; }
}

# Runs a dotnet command that builds. One compiler serves all its projects, which halves the time; it bears a name of its own. Parts
# of the SDK do not ask for a compiler by that name and start another: it is known by the mark that all it starts is given.
with_one_compiler() {
  GATEWRIGHT_BUILD=$$ without_profile "$@" -p:UseSharedCompilation=true -p:SharedCompilationId=gatewright-$$
}

# Ends the compilers that were started: they would wait for more work for ten minutes, with a gigabyte in hand.
end_compilers() {
  local process
  for process in /proc/[0-9]*; do
    if [[ $(tr '\0' ' ' <"$process/cmdline") == *VBCSCompiler* ]] && grep -qzx "GATEWRIGHT_BUILD=$$" "$process/environ"; then
      kill "${process#/proc/}"
    fi
  done 2>/dev/null
}

# Installs a Debian package where it is missing and that may be done, else says how: NAME, for what, a file it brings.
require_package() {
  compgen -G "$3" >/dev/null && return
  if [[ $(id -u) == 0 ]] && command -v apt-get >/dev/null; then
    echo "Installing $1 for the tests of $2…"
    export DEBIAN_FRONTEND=noninteractive
    { apt-get update && apt-get install -y --no-install-recommends "$1"; } >/dev/null 2>&1
  fi
  compgen -G "$3" >/dev/null && return
  echo "The tests of $2 want $1, which is not installed: sudo apt-get install $1" >&2
  return 1
}
