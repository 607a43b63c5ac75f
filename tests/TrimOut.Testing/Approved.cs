using System.Runtime.CompilerServices;
using Snapshooter;
using Snapshooter.Xunit;

namespace TrimOut.Testing;

/// <summary>Holds a text against the approved one beside the test. The only place that knows the snapshot package.</summary>
public static class Approved
{
    static Approved()
    {
        // Without this a missing approved text would be written, and pass, on a build machine.
        if (Environment.GetEnvironmentVariable("CI") is not null)
            Environment.SetEnvironmentVariable("SNAPSHOOTER_STRICT_MODE", "on");
    }

    /// <summary>Fails with both texts when they differ; the new one is kept under __mismatch__.</summary>
    /// <param name="text">The text as it is now.</param>
    /// <param name="name">The name of the approved text, unique in the folder of the test.</param>
    /// <param name="file">The file of the test, named as its class is: the package would look for it on the stack, where a tail call leaves none.</param>
    /// <param name="test">The test.</param>
    public static void Match(string text, string name, [CallerFilePath] string file = "", [CallerMemberName] string test = "") =>
        Snapshot.Match(text.Replace("\r\n", "\n", StringComparison.Ordinal),
            new SnapshotFullName($"{Path.GetFileNameWithoutExtension(file)}.{test}_{name}.snap", Path.GetDirectoryName(file)!));
}
