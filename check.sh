#!/usr/bin/env bash
# Everything that proves the project: restore, format check, build, tests. The README's second command, and what CI runs.
# Ends with the line "N passed, N failed, N skipped" and exit status 0 only if nothing failed.
set -u
cd "$(dirname "$0")"
export DOTNET_CLI_TELEMETRY_OPTOUT=1 DOTNET_NOLOGO=1
export MSBUILDDISABLENODEREUSE=1

fail() { printf '%s\n' "$1" >&2; printf '0 passed, 1 failed, 0 skipped\n'; exit 1; }

# --- what a new machine may lack ------------------------------------------------------------------------------------
# Pictures with text need fontconfig and one font. Debian's packages, where this machine lets us install them.
need_packages=()
if ! ldconfig -p 2>/dev/null | grep -q 'libfontconfig\.so\.1'; then need_packages+=(libfontconfig1); fi
if ! ls /usr/share/fonts/truetype/dejavu/DejaVuSans.ttf >/dev/null 2>&1; then need_packages+=(fonts-dejavu-core); fi
# The workbench's pages are tested in a real browser.
if ! [ -x /usr/bin/chromium ]; then need_packages+=(chromium); fi
if [ "${#need_packages[@]}" -gt 0 ]; then
    echo "== this machine lacks: ${need_packages[*]}"
    sudo_if_needed=""
    [ "$(id -u)" -eq 0 ] || sudo_if_needed="sudo -n"
    if command -v apt-get >/dev/null 2>&1; then
        $sudo_if_needed apt-get update -qq >/dev/null 2>&1
        DEBIAN_FRONTEND=noninteractive $sudo_if_needed apt-get install -y -qq "${need_packages[@]}" >/dev/null 2>&1 \
            || echo "could not install ${need_packages[*]}: tests that need them will fail or be skipped, and say so" >&2
    else
        echo "install them by hand: tests that need them will fail or be skipped, and say so" >&2
    fi
fi

# --- restore, format, build -----------------------------------------------------------------------------------------
echo "== restore (locked)"
dotnet restore Longrail.slnx --locked-mode -v quiet || fail "restore failed: see above"
echo "== build"
dotnet build Longrail.slnx --no-restore -c Release -v quiet || fail "build failed: see above"
echo "== format"
dotnet format Longrail.slnx --no-restore --verify-no-changes -v quiet || fail "format check failed: run 'dotnet format Longrail.slnx'"

# --- tests ----------------------------------------------------------------------------------------------------------
passed=0 failed=0 skipped=0
log=$(mktemp)
trap 'rm -f "$log"' EXIT
for project in tests/*.Tests; do
    name=$(basename "$project")
    echo "== $name"
    "artifacts/bin/$name/release/$name" -noColor -noLogo >"$log" 2>&1
    status=$?
    # The runner's summary: "NAME  Total: 332, Errors: 0, Failed: 0, Skipped: 0, Not Run: 0, Time: 1.251s".
    summary=$(grep -E 'Total: [0-9]+, Errors: [0-9]+, Failed: [0-9]+, Skipped: [0-9]+' "$log" | tail -n 1)
    count() { printf '%s' "$summary" | sed -nE "s/.*$1: ([0-9]+).*/\1/p"; }
    total=$(count Total); f=$(count Failed); s=$(count Skipped); errors=$(count Errors)
    f=$(( ${f:-0} + ${errors:-0} ))
    # A run that ended without a summary, or badly without a failed test, counts as a failure of its own.
    if [ -z "$total" ] || { [ "$status" -ne 0 ] && [ "$f" -eq 0 ]; }; then f=$((f + 1)); total=$(( ${total:-0} + 1 )); fi
    p=$(( ${total:-0} - f - ${s:-0} ))
    if [ "$f" -ne 0 ]; then cat "$log"; fi
    echo "   ${p:-0} passed, ${f:-0} failed, ${s:-0} skipped"
    if [ "${s:-0}" -ne 0 ]; then grep -F '[SKIP]' "$log" | head -50; fi
    passed=$((passed + ${p:-0})); failed=$((failed + ${f:-0})); skipped=$((skipped + ${s:-0}))
done

# --- the README's commands ------------------------------------------------------------------------------------------
echo "== README commands"
folder=$(mktemp -d)
while IFS= read -r line; do
    case "$line" in
        *"dotnet run --project src/Longrail.Cli -- "*)
            rest=${line#*dotnet run --project src/Longrail.Cli -- }
            rest=${rest//--picture /--picture $folder/}
            if eval "dotnet artifacts/bin/Longrail.Cli/release/longrail.dll $rest" >"$log" 2>&1; then
                passed=$((passed + 1))
            else
                failed=$((failed + 1)); echo "README command failed: $line"; cat "$log"
            fi ;;
    esac
done < <(sed -n '/^```/,/^```/p' README.md 2>/dev/null | grep -E '^[[:space:]]*dotnet run --project src/Longrail.Cli -- ' | grep -v ' - ')
rm -rf "$folder"

printf '%d passed, %d failed, %d skipped\n' "$passed" "$failed" "$skipped"
[ "$failed" -eq 0 ]
