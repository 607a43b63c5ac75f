using System.ComponentModel;
using System.Diagnostics;
using System.Globalization;
using System.Runtime.InteropServices;
using System.Text;
using TrimOut.Core;
using TrimOut.HouseFile.Files;
using TrimOut.HouseFile.Texts;

namespace TrimOut.Desks;

/// <summary>The user's own editor, as VISUAL or EDITOR names it: it has the terminal while it runs.</summary>
internal static class UserEditor
{
    private const int NotFound = 127;
    private const int Largest = 1 << 20;

    /// <summary>Has a text edited.</summary>
    /// <param name="text">The text.</param>
    /// <param name="editor">The command, arguments and all, as a shell reads it; null where none is named.</param>
    /// <returns>The text as it was left, or why there is none. What was written in an editor that failed stays in its file, which is named.</returns>
    public static Result<string> Edit(string text, string? editor)
    {
        if (string.IsNullOrWhiteSpace(editor))
            return new Refusal("No editor is named. Set VISUAL or EDITOR, such as EDITOR=nano, before TrimOut is started. Nothing was changed.");
        try
        {
            var folder = Directory.CreateTempSubdirectory("trimout-").FullName;
            var file = Path.Combine(folder, "note.txt");
            OwnFile.Write(file, Encoding.UTF8.GetBytes(text + "\n"));
            var code = Run(editor, file);
            var left = TextBytes.Marking.GetString(PlainFile.ReadAll(file, Largest)).TrimStart('\ufeff').TrimEnd();
            if (code == 0 && TextBytes.BrokenLine(left) is { } line)
                return new Refusal(string.Create(CultureInfo.InvariantCulture,
                    $"Line {line} of the text holds bytes that are not UTF-8: nothing was changed. Have your editor save as UTF-8. ")
                    + $"What you wrote there is kept in {file}.");
            if (code == 0 || left == text)
                Directory.Delete(folder, recursive: true);
            return code == 0 ? left : new Refusal(code == NotFound
                ? $"The editor {editor} is not there. Nothing was changed."
                : string.Create(CultureInfo.InvariantCulture, $"The editor {editor} ended with {code}: nothing was changed.")
                    + (left == text ? "" : $" What you wrote there is kept in {file}."));
        }
        catch (Exception failed) when (failed is IOException or UnauthorizedAccessException or Win32Exception)
        {
            return new Refusal($"The editor {editor} did not hand the text back: {failed.Message} Nothing was changed.");
        }
    }

    private static int Run(string editor, string file)
    {
        // As other programs do it: the shell takes the command apart, the file is one word of its own.
        var start = OperatingSystem.IsWindows()
            ? new ProcessStartInfo("cmd.exe", ["/c", editor, file])
            : new ProcessStartInfo("/bin/sh", ["-c", $"{editor} \"$@\"", editor, file]);
        // Ctrl+C in the editor is the editor's.
        using var interrupted = PosixSignalRegistration.Create(PosixSignal.SIGINT, signal => signal.Cancel = true);
        using var quit = PosixSignalRegistration.Create(PosixSignal.SIGQUIT, signal => signal.Cancel = true);
        using var running = Process.Start(start)!;
        running.WaitForExit();
        return running.ExitCode;
    }
}
