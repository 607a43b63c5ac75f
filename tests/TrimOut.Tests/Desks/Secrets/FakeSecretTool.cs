using TrimOut.Desks.Secrets;

namespace TrimOut.Tests.Desks.Secrets;

/// <summary>A program called <c>secret-tool</c> in a folder of its own that ends and answers as the real one does, or as one that is told otherwise.</summary>
internal sealed class FakeSecretTool : IDisposable
{
    private const string Script = """
        #!/bin/sh
        here=$(dirname "$0")
        printf '%s\n' "$*" >> "$here/arguments"
        printf '%s\n' "$(env)" >> "$here/environment"
        told=$(cat "$here/told" 2>/dev/null)
        if [ "$told" = hang ]; then
          sleep 600 &
          echo $! > "$here/asleep"
          wait
        fi
        if [ "$told" = refuse ]; then
          echo "secret-tool: Cannot autolaunch D-Bus without X11 \$DISPLAY" >&2
          exit 1
        fi
        verb=$1
        shift
        [ "$verb" = store ] && shift
        at=$here/kept-$(printf '%s ' "$@" | tr -c 'a-z0-9\n' -)
        case $verb in
          store)
            if [ "$told" = tells ]; then cat >&2; exit 1; fi
            if [ "$told" = drop ]; then cat > /dev/null; else cat > "$at"; fi ;;
          lookup)
            [ "$told" = endless ] && exec cat /dev/zero
            [ -f "$at" ] || exit 1
            if [ "$told" = lie ]; then printf another; else cat "$at"; fi ;;
          clear)
            [ "$told" = "keep all" ] && exit 0
            [ -f "$at" ] || exit 1
            rm "$at" ;;
          *) exit 2 ;;
        esac
        """;

    public FakeSecretTool()
    {
        File.WriteAllText(In("secret-tool"), Script + "\n");
        if (!OperatingSystem.IsWindows())
            File.SetUnixFileMode(In("secret-tool"), UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
    }

    public string Folder { get; } = Directory.CreateTempSubdirectory("trimout-secrets-").FullName;

    /// <summary>What it is called with, a line a time.</summary>
    public string[] Arguments => File.Exists(In("arguments")) ? File.ReadAllLines(In("arguments")) : [];

    /// <summary>The environment of all its runs.</summary>
    public string Environment => File.ReadAllText(In("environment"));

    /// <summary>The process that a hanging one waits for; null where none is.</summary>
    public int? Asleep => File.Exists(In("asleep")) && int.TryParse(File.ReadAllText(In("asleep")), out var id) ? id : null;

    /// <summary>All secrets that it holds.</summary>
    public IEnumerable<string> Kept => Directory.EnumerateFiles(Folder, "kept-*").Select(File.ReadAllText);

    /// <summary>How it behaves from now on: hang, refuse, tells, drop, lie, endless, keep all; as the real one where nothing is said.</summary>
    public void Told(string what = "") => File.WriteAllText(In("told"), what);

    public ISecretStore Store(int seconds = 30) => new SecretTool(new StoreProgram("secret-tool", TimeSpan.FromSeconds(seconds), Folder));

    public void Dispose() => Directory.Delete(Folder, recursive: true);

    private string In(string name) => Path.Combine(Folder, name);
}
