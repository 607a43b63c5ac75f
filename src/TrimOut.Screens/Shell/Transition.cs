using TrimOut.Core;
using TrimOut.Core.History;

namespace TrimOut.Screens.Shell;

/// <summary>What comes of a key: the screen as it is now, and what is asked of the shell.</summary>
internal sealed record Transition(IScreen Screen, Ask? Ask = null)
{
    public static Transition Say(IScreen screen, string text) => new(screen, new Ask.Say(text));

    public static Transition Save(IScreen screen, Result<Draft> draft) => new(screen, new Ask.Save(draft));

    public static Transition Open(IScreen screen, IScreen next) => new(screen, new Ask.Open(next));

    public static Transition Type(IScreen screen, Entry entry) => new(screen, new Ask.Type(entry));
}

/// <summary>What a screen asks of the shell. Screens never change the house themselves.</summary>
internal abstract record Ask
{
    private Ask() { }

    /// <summary>A word in the status line.</summary>
    public sealed record Say(string Text) : Ask;

    /// <summary>A change to be saved; a refusal is shown. Afterwards the screen may go on.</summary>
    public sealed record Save(Result<Draft> Draft, Func<IScreen, ScreenContext, Transition>? Then = null) : Ask;

    /// <summary>Another screen on top of this one, or in its place.</summary>
    public sealed record Open(IScreen Screen, bool InPlace = false) : Ask;

    /// <summary>One step back; out of a house after a question.</summary>
    public sealed record Back : Ask;

    /// <summary>One step back, asked already.</summary>
    public sealed record BackNow : Ask;

    /// <summary>A line of text from the user.</summary>
    public sealed record Type(Entry Entry) : Ask;

    /// <summary>A question that one key answers with yes, or the letter y, and any other with no.</summary>
    public sealed record Confirm(string Question, string Yes, Transition OnYes) : Ask
    {
        /// <summary>Whether a key that does not say yes does what it does anywhere: for a question that no answer is waited for.</summary>
        public bool OthersAct { get; init; }

        /// <summary>Where a key leads that does not say yes; null where nothing is done then.</summary>
        public Transition? OnNo { get; init; }

        /// <summary>Whether Enter was pressed, which answers no question: then it says so, and is still asked.</summary>
        public bool Entered { get; init; }

        /// <summary>What the hand types to any question.</summary>
        public const string AlsoYes = "y";

        /// <summary>The question as it is shown: with both keys that say yes, so that any other key is any other key.</summary>
        public string Shown => Entered ? $"Enter answers nothing here. {Asked}" : Asked;

        private string Asked
        {
            get
            {
                var key = $" {KeyNames.Shown(Yes)} ";
                var others = Question.IndexOf("any other key", StringComparison.OrdinalIgnoreCase);
                var at = Yes == AlsoYes || others < 0 ? -1 : Question.LastIndexOf(key, others, StringComparison.Ordinal);
                return at < 0 ? Question : $"{Question[..(at + key.Length)]}or {AlsoYes} {Question[(at + key.Length)..]}";
            }
        }

        /// <summary>Whether a key says yes: only one that the question names does.</summary>
        public bool IsYes(string stroke) => stroke == Yes || (stroke == AlsoYes && Asked != Question);
    }

    /// <summary>Work that may take long, done beside the keys: what it is called, and what is asked when it is through.</summary>
    public sealed record Beside(string Doing, Func<IDesk, Action<string>, CancellationToken, Result<Ask>> Do) : Ask;

    /// <summary>A house to be opened or made, and then worked on; one that another program has open can be looked at by its path.</summary>
    public sealed record Enter(Func<IDesk, Result<Scribe>> How, string? Path = null) : Ask;

    /// <summary>The latest change taken back, after a look at it.</summary>
    public sealed record Undo : Ask;

    /// <summary>What was last taken back, brought back, after a look at it.</summary>
    public sealed record Redo : Ask;

    /// <summary>Something about the history itself, such as an undo that was looked at.</summary>
    public sealed record Carry(Func<Scribe, Result<Change>> What) : Ask;

    /// <summary>One of the main screens, in place of what lies above the job sheet, and there perhaps an action at once.</summary>
    public sealed record Section(Func<ScreenContext, IScreen> Make, IKeyAction? Then = null) : Ask;

    /// <summary>An action that was found by its name.</summary>
    public sealed record Action(IKeyAction What) : Ask;

    /// <summary>The whole house in a new file, to go on there, after a question where.</summary>
    public sealed record Elsewhere : Ask;

    /// <summary>The whole house in that new file.</summary>
    public sealed record ElsewhereNow(string Path) : Ask;

    /// <summary>Text for the clipboard, and what it is in a few words.</summary>
    public sealed record Copy(string What, string Text) : Ask;

    /// <summary>Text to be edited in the user's own editor, and what comes of it.</summary>
    public sealed record Edit(string Text, Func<string, ScreenContext, Transition> Then) : Ask;

    /// <summary>What another copy has and this one has not, taken in after it was looked at.</summary>
    public sealed record TakeIn(Merge Merge, string From) : Ask;

    /// <summary>The mouse for clicks, or left to the terminal.</summary>
    public sealed record SwitchMouse : Ask;

    /// <summary>A question who is working here.</summary>
    public sealed record AskWho : Ask;

    /// <summary>Somebody who said who they are: whose changes are written from now on, and kept for the next time.</summary>
    public sealed record Named(string Who) : Ask;

    /// <summary>The next look.</summary>
    public sealed record NextLook : Ask;

    /// <summary>The sheet that labels are written for from now on, as it was typed.</summary>
    public sealed record Labels(string Typed) : Ask;

    /// <summary>An end, after a question.</summary>
    public sealed record Leave : Ask;

    /// <summary>An end.</summary>
    public sealed record LeaveNow : Ask;

    /// <summary>The keys of this screen.</summary>
    public sealed record Help : Ask;
}
