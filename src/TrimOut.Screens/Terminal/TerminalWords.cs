using System.Text;
using TrimOut.Core;

namespace TrimOut.Screens.Terminal;

/// <summary>What is said to the terminal besides what stands on it. Whatever was typed is made safe first.</summary>
/// <remarks>Sequences by ECMA-48 and as xterm's "Control Sequences" lists them: OSC 2 (title), OSC 52 (clipboard), window operations 22 and 23, and the
/// private modes 1000, 1003, 1006 and 1015 of the mouse.</remarks>
internal static class TerminalWords
{
    private const char Escape = '\u001b';

    /// <summary>Rings, or flashes, as the user has it.</summary>
    public const string Bell = "\a";

    /// <summary>Keeps the title that the terminal had, for <see cref="TitleBack"/>.</summary>
    public static readonly string KeepTitle = $"{Escape}[22;2t";

    /// <summary>The title as it was before; empty on a terminal that kept none.</summary>
    public static readonly string TitleBack = $"{Title("")}{Escape}[23;2t";

    /// <summary>Presses and releases are sent, in decimal figures, and no mere moves: those would wake the program for nothing.</summary>
    public static readonly string MouseOn = $"{Escape}[?1003l{Escape}[?1000h{Escape}[?1006h";

    /// <summary>The mouse is the terminal's own.</summary>
    public static readonly string MouseOff = $"{Escape}[?1003l{Escape}[?1000l{Escape}[?1015l{Escape}[?1006l";

    /// <summary>Names the terminal's window.</summary>
    public static string Title(string title) => $"{Escape}]2;{ShownText.Line(title)}{Bell}";

    /// <summary>Puts text on the clipboard of the machine that the terminal is on.</summary>
    public static string Copy(string text) => $"{Escape}]52;c;{Convert.ToBase64String(Encoding.UTF8.GetBytes(ShownText.Lines(text)))}{Bell}";
}
