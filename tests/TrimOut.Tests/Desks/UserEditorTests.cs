using TrimOut.Desks;
using TrimOut.Tests.Terminals;

namespace TrimOut.Tests.Desks;

/// <summary>Editors of every sort: whatever they do, nothing that was written is lost.</summary>
public sealed class UserEditorTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("trimout-editor-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    private string Script(string lines)
    {
        var path = Path.Combine(_folder, "an editor.sh");
        File.WriteAllText(path, "#!/bin/sh\n" + lines + "\n");
        if (!OperatingSystem.IsWindows())
            File.SetUnixFileMode(path, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
        return $"'{path}'";
    }

    [LinuxFact]
    public void WhatItLeavesInTheFileComesBackAndNoFileStays()
    {
        var note = Path.Combine(_folder, "seen");
        Assert.Equal("before\nand after", UserEditor.Edit("before", Script($"echo \"$1\" > '{note}'; echo 'and after' >> \"$1\"")).Value);
        Assert.False(File.Exists(File.ReadAllText(note).Trim()));
    }

    [LinuxFact]
    public void ItsArgumentsAreItsOwn() => Assert.Equal("--wait", UserEditor.Edit("", Script("echo \"$1\" > \"$2\"") + " --wait").Value);

    [LinuxFact]
    public void OneThatFailsSaysSoAndWhatWasWrittenInItIsKept()
    {
        var refused = UserEditor.Edit("before", Script("echo 'an hour of work' > \"$1\"; exit 3")).Reason!;
        Assert.Contains("ended with 3: nothing was changed", refused, StringComparison.Ordinal);
        var kept = refused[(refused.IndexOf("kept in ", StringComparison.Ordinal) + 8)..].TrimEnd('.');
        Assert.Equal("an hour of work\n", File.ReadAllText(kept));
        Directory.Delete(Path.GetDirectoryName(kept)!, recursive: true);
    }

    [LinuxFact]
    public void OneThatFailsAtOnceLeavesNothing()
    {
        var note = Path.Combine(_folder, "seen");
        Assert.DoesNotContain("kept in", UserEditor.Edit("before", Script($"echo \"$1\" > '{note}'; exit 1")).Reason, StringComparison.Ordinal);
        Assert.False(File.Exists(File.ReadAllText(note).Trim()));
    }

    [LinuxFact]
    public void OneThatIsNotThereIsNamed() =>
        Assert.Contains("no-such-editor is not there", UserEditor.Edit("x", "no-such-editor").Reason, StringComparison.Ordinal);

    [LinuxFact]
    public void OneThatTakesTheFileAwaySaysSo() =>
        Assert.Contains("did not hand the text back", UserEditor.Edit("x", Script("rm \"$1\"")).Reason, StringComparison.Ordinal);

    [Theory]
    [InlineData(null)]
    [InlineData("")]
    [InlineData("  ")]
    public void WhereNoneIsNamedItSaysHowToNameOne(string? editor) =>
        Assert.Contains("Set VISUAL or EDITOR", UserEditor.Edit("x", editor).Reason, StringComparison.Ordinal);
}
