using System.Diagnostics;
using System.Text;
using TrimOut.Desks;
using TrimOut.Tests.Terminals;

namespace TrimOut.Tests.Verbs;

/// <summary>Bytes that are no text in UTF-8: nothing of them is taken, wherever they come from, and a text in UTF-16 is read as what it is.</summary>
public sealed class TextBytesTests : IDisposable
{
    private readonly RunTrimOut _run = new();

    public TextBytesTests()
    {
        Assert.Equal(0, _run.Run("new", "elm").Code);
        File.WriteAllText(_run.In("s.csv"), "tag,width\nW01,30\n");
        Assert.Equal(0, _run.Run("import", "elm.trimout", "s.csv").Code);
    }

    public void Dispose() => _run.Dispose();

    private (int Code, string Output, string Error) Set(byte[] input)
    {
        using var process = _run.Start("set", "elm.trimout");
        process.StandardInput.BaseStream.Write(input);
        process.StandardInput.Close();
        var error = process.StandardError.ReadToEndAsync();
        var output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return (process.ExitCode, output, error.Result);
    }

    [Fact]
    public void ALineForSetIsRefusedAndTheOthersAreTaken()
    {
        var set = Set([.. "W01\tnote\tK\u00fcche\n"u8, .. "W01\tnote\tK"u8, 0xfc, .. "che\n"u8, .. "W01\tnote\tlost \ufffd sign\n"u8]);
        Assert.Equal((2, "1\n3\n"), (set.Code, set.Output));
        Assert.Contains("Line 2: It holds bytes that are not UTF-8.", set.Error);
        Assert.Contains("lost \ufffd sign", _run.Run("history", "elm.trimout").Output);
    }

    [Fact]
    public void SetTakesUtf16AsImportDoes()
    {
        var set = Set([.. Encoding.Unicode.GetPreamble(), .. Encoding.Unicode.GetBytes("W01\tnote\tK\u00fcche\r\n")]);
        Assert.Equal((0, "1\n"), (set.Code, set.Output));
        Assert.Contains("K\u00fcche", _run.Run("history", "elm.trimout").Output);
    }

    [Fact]
    public void ATabInAValueIsSaid()
    {
        var set = Set([.. "W01\tnote\ta\tb\n"u8]);
        Assert.Equal(0, set.Code);
        Assert.Contains("Line 1: characters in it that can't be seen, or act on a screen, were left out.", set.Error);
    }

    [Fact]
    public void AHistoryIsRefusedAtItsLine()
    {
        var lines = _run.Run("history", "elm.trimout").Output.Split('\n', StringSplitOptions.RemoveEmptyEntries);
        File.WriteAllBytes(_run.In("h.jsonl"), [.. Encoding.UTF8.GetBytes(lines[0] + "\n"),
            .. Encoding.Latin1.GetBytes(lines[1].Replace("s.csv", "\u00fc.csv", StringComparison.Ordinal) + "\n")]);
        var refused = _run.Run("restore", "made", "h.jsonl");
        Assert.Equal(65, refused.Code);
        Assert.Contains("Line 2: It holds bytes that are not UTF-8.", refused.Error);
        Assert.False(File.Exists(_run.In("made.trimout")));
    }

    [LinuxFact]
    public void ATextFromTheEditorIsRefusedAndKept()
    {
        var script = _run.In("edit.sh");
        File.WriteAllText(script, "#!/bin/sh\nprintf 'one\\nK\\374che\\n' > \"$1\"\n");
        Process.Start("chmod", ["+x", script]).WaitForExit();
        var edited = UserEditor.Edit("before", script);
        Assert.False(edited.Ok);
        var reason = edited.Reason!;
        Assert.Contains("Line 2 of the text holds bytes that are not UTF-8", reason);
        var kept = reason[(reason.LastIndexOf(" in ", StringComparison.Ordinal) + 4)..].TrimEnd('.');
        Assert.True(File.Exists(kept), kept);
        Directory.Delete(Path.GetDirectoryName(kept)!, recursive: true);
    }
}
