using TrimOut.Screens.Frames;

namespace TrimOut.Screens.Shell;

/// <summary>One screen: plain data that draws itself and turns keys into other plain data.</summary>
internal interface IScreen
{
    /// <summary>Its name in the top line.</summary>
    string Title { get; }

    /// <summary>Its keys.</summary>
    IReadOnlyList<IKeyAction> Keys { get; }

    /// <summary>What its signs and headings mean, from the tables that draw them.</summary>
    IReadOnlyList<Sign> Signs => [];

    /// <summary>Draws it.</summary>
    /// <param name="area">Everything between the top line and the status line.</param>
    /// <param name="context">What is seen.</param>
    /// <param name="typing">What is being typed, if anything.</param>
    void Draw(Area area, ScreenContext context, Typing? typing);

    /// <summary>
    /// The key that types a figure for what is under the cursor; null where none is typed. Digits that are typed without it find their way back.
    /// </summary>
    string? TypesBy(ScreenContext context) => null;

    /// <summary>Whether letters that come as fast as those of a word are one, and no keys: on a screen whose rows are values.</summary>
    bool WordsType(ScreenContext context) => false;

    /// <summary>The screen after the house changed: a selection that is gone is mended here.</summary>
    IScreen Fit(ScreenContext context) => this;
}

/// <summary>What is being typed just now.</summary>
/// <param name="Entry">What is asked for.</param>
/// <param name="Text">The text so far.</param>
/// <param name="Refused">Why it can't be taken; null until it was tried.</param>
/// <param name="Note">Something to say until the text changes; null when there is nothing.</param>
/// <param name="Sought">What was last typed by hand: the arrow keys walk through the choices that have it.</param>
internal sealed record Typing(Entry Entry, string Text, string? Refused, string? Note = null, string Sought = "")
{
    /// <summary>Whether the text was typed, so that it goes on at its end; a text that was offered stands selected, and typing replaces it.</summary>
    public bool Begun { get; init; }

    /// <summary>Whether the next Enter does not take what stands there: it was meant to open the field, which was open already.</summary>
    public bool Stays { get; init; }

    /// <summary>The text that was asked about; taken again it is meant so.</summary>
    public string? Doubted { get; init; }
}

/// <summary>A screen that changes with the clock alone while it counts.</summary>
internal interface ITicking
{
    bool Ticking { get; }

    /// <summary>When what it counts is over, and the bell rings; null where nothing is counted.</summary>
    DateTimeOffset? EndsAt(ScreenContext context);
}
