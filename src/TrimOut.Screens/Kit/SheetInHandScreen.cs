using TrimOut.Core.Checks;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Kits;
using TrimOut.Core.Units;
using TrimOut.Screens.Frames;
using TrimOut.Screens.Shell;

namespace TrimOut.Screens.Kit;

/// <summary>The guided way through the sheet of one part, value by value in the order of sheets: to read each there is to check it.</summary>
internal sealed record SheetInHandScreen(string PartId, string Name, int Selected) : IFiltered
{
    private const int Labels = 28;
    private const string NameField = "name";

    public string Title => $"Sheet in hand: {Name}";

    public IReadOnlyList<IKeyAction> Keys => SheetInHandKeys.All;

    public IReadOnlyList<Sign> Signs { get; } =
        [new(g => g.Nothing, "no value yet"), new(_ => "?", "a value of the kit that nobody checked against the maker's sheet yet")];

    /// <summary>
    /// Where a part's sheet is to be begun: what is read counts against the edition that is said, so the edition is looked at before any value.
    /// </summary>
    public static SheetInHandScreen At(Item part, House house)
    {
        var rows = Rows(part).ToList();
        var edition = rows.FindIndex(f => f.Name == AboutSheet.Edition);
        return new(part.Id, house.NameOf(part), Math.Clamp(rows.FindIndex(f => Open(part, f)), 0, edition));
    }

    public Item? Part(ScreenContext context) => context.House.Find(PartId) is { Removed: false } part ? part : null;

    public string Search { get; init; } = "";

    /// <summary>
    /// What is asked: which sheet it is and its edition, what the part is called, then the values in the order of sheets; of these the ones that are shown.
    /// </summary>
    public IReadOnlyList<Fact> Values(ScreenContext context) => Part(context) is { } part
        ? [.. Rows(part).Where(f => Search.Length == 0 || Filtering.Fits($"{f.Label} {f.ShowOf(part, context.House)}", Search))] : [];

    public (int Shown, int All) Count(ScreenContext context) => (Values(context).Count, Part(context) is { } part ? Rows(part).Count() : 0);

    public IScreen Searching(string search, ScreenContext context)
    {
        var to = this with { Search = search };
        return to with { Selected = Filtering.Keep(Values(context), Selected, to.Values(context), f => f.Name) };
    }

    /// <summary>A sheet is gone through in its order: what was looked for is gone to, and all the others are there again.</summary>
    public IScreen Found(ScreenContext context) => Searching("", context);

    private static IEnumerable<Fact> Rows(Item part) =>
        new[] { AboutSheet.Sheet, AboutSheet.Edition, NameField }.Select(n => FactTable.Find(part.Kind, n)!).Concat(SheetValues.Of(part));

    public string? TypesBy(ScreenContext context) => Current(context) is null ? null : "enter";

    public bool WordsType(ScreenContext context) => context.ReadOnlyBecause is null && Current(context) is not null;

    public Fact? Current(ScreenContext context) => Values(context) is var values && Selected < values.Count ? values[Selected] : null;

    public IScreen Fit(ScreenContext context) => this with
    {
        Name = Part(context) is { } part ? context.House.NameOf(part) : Name,
        Selected = Paging.Move(Selected, 0, Values(context).Count),
    };

    /// <summary>With the cursor on a value, wherever it stands now; where it was when that value is not here.</summary>
    public SheetInHandScreen On(Fact fact, ScreenContext context) =>
        Values(context).ToList().IndexOf(fact) is >= 0 and var at ? this with { Selected = at } : this;

    /// <summary>At the next value after the cursor that is blank or was not held; null when there is none behind it.</summary>
    public SheetInHandScreen? Next(ScreenContext context)
    {
        var (part, values) = (Part(context), Values(context));
        for (var at = Selected + 1; part is not null && at < values.Count; at++)
        {
            if (Open(part, values[at]))
                return this with { Selected = at };
        }
        return null;
    }

    /// <summary>What was asked and could not be found on the sheet, and how much was not asked yet.</summary>
    public string Left(ScreenContext context)
    {
        if (Part(context) is not { } part)
            return "";
        var notFound = SheetValues.NotOnSheetIn(part).ToHashSet();
        var blank = SheetValues.BlankIn(part).ToLookup(notFound.Contains, f => f.Label);
        var (left, open) = (blank[true].ToList(), blank[false].Count());
        string?[] said =
        [
            left.Count > 0 ? $"Not found on the sheet, {NumberText.Plain(left.Count)}: {string.Join("; ", left)}." : null,
            open > 0 ? $"{NumberText.Plain(open)} blank and not asked{(left.Count > 0 ? "" : " yet")}." : null,
        ];
        return (left.Count + open == 0 ? $"Every value of {Name} is there." : string.Join(" ", said.OfType<string>()))
            + ReadOff(part, context.House) + NotHeld(part);
    }

    /// <summary>How many values wait: for the edition that is said, because they were changed, or to be looked at at all.</summary>
    private static string NotHeld(Item part)
    {
        var open = SheetValues.NotHeldIn(part).ToLookup(f => SheetMark.OlderEdition(part, f) is not null ? Waits.ForEdition
            : SheetMark.IsChangedSince(part, f) ? Waits.Changed : Waits.Unchecked);
        var (older, changed, rest) = (open[Waits.ForEdition].Count(), open[Waits.Changed].Count(), open[Waits.Unchecked].Count());
        return (older == 0 ? "" : $" {NumberText.Counted(older, "value was", "values were")} checked against another edition, and "
            + $"{(older == 1 ? "waits" : "wait")} to be checked against this one.")
            + (changed == 0 ? "" : $" {NumberText.Counted(changed, "value was", "values were")} changed since "
                + $"{(changed == 1 ? "it was" : "they were")} checked.")
            + (rest == 0 ? "" : $" {NumberText.Counted(rest, "value is", "values are")} not checked.");
    }

    private enum Waits
    {
        ForEdition,
        Changed,
        Unchecked,
    }

    private static string ReadOff(Item part, House house)
    {
        string Said(string name) => AboutSheet.Of(part.Kind, name).ShowOf(part, house);
        var (sheet, edition) = (Said(AboutSheet.Sheet), Said(AboutSheet.Edition));
        return (sheet.Length, edition.Length) switch
        {
            (0, 0) => " Which sheet that was is not said yet.",
            (0, _) => $" The sheet: edition {edition}.",
            (_, 0) => $" The sheet: {sheet}; its edition is not said yet.",
            _ => $" The sheet: {sheet}, edition {edition}.",
        };
    }

    public void Draw(Area area, ScreenContext context, Typing? typing)
    {
        if (Part(context) is not { } part)
        {
            area.Put(2, 1, "This part is no longer in the house. Esc goes back.", Tone.Strong);
            return;
        }
        // A value that is being typed may take away what a kind like that can't have: the rows stay until it is taken.
        var stands = context.Saved ?? context;
        var (values, passed, split) = (Values(stands), PassedBy(stands), Math.Clamp(area.Width * 6 / 10, 46, 90));
        foreach (var (y, at) in Paging.Rows(area.Part(0, 0, split, area.Height), values.Count, Selected, at => this with { Selected = at }))
        {
            var (fact, current) = (values[at], at == Selected);
            // What is typed has no mark before it is taken: the one that stands is that of the value that is there.
            var of = current ? Part(stands) ?? part : part;
            var shown = fact.ShowOf(of, context.House);
            area.PutFit(1, y, Labels, fact.Label, current ? Tone.Selected : shown.Length == 0 ? Tone.Dim : Tone.Text);
            area.Put(Labels + 2, y, shown.Length > 0 && IsOfSheet(of, fact) && Open(of, fact) ? "?" : " ", Tone.Caution);
            var cells = split - Labels - 5;
            if (current && typing?.Entry.InPlace == $"{part.Id}/{fact.Name}")
            {
                area.PutFit(Labels + 4, y, cells, typing.Text, Tone.Field);
                area.PutSlot(Labels + 4, y, cells);
            }
            else
            {
                area.PutFit(Labels + 4, y, cells, shown.Length == 0 ? context.Glyphs.Nothing : shown,
                    shown.Length > 0 ? Tone.Text : passed.Contains(fact) ? Tone.Caution : Tone.Dim);
            }
        }
        DrawAbout(area.Part(split + 1, 0, area.Width - split - 1, area.Height), part, context);
    }

    /// <summary>Whether it is a value of the sheet: not what the part is called, nor what is said about the sheet itself.</summary>
    public static bool IsOfSheet(Item part, Fact fact) => SheetValues.Of(part.Kind).Contains(fact);

    /// <summary>Whether a row is still asked: it is blank, or its value was not checked. The name of a blank kit is asked until a value was.</summary>
    public static bool Open(Item part, Fact fact) => part.Latest(fact)?.Stored is not { } stored
        || (IsOfSheet(part, fact) ? !SheetMark.Holds(part, fact)
        : fact.Name == NameField && KitWords.IsNameOfBlank(stored) && !SheetValues.Of(part).Any(f => SheetMark.Holds(part, f)));

    /// <summary>What was gone past without a value, up to the cursor.</summary>
    public IReadOnlyList<Fact> PassedBy(ScreenContext context) => Part(context) is not { } part ? []
        : [.. Values(context).Take(Selected).Where(f => SheetValues.BlankIn(part).Contains(f))];

    private void DrawAbout(Area area, Item part, ScreenContext context)
    {
        var now = context.Saved ?? context;
        if (Current(now) is not { } fact)
            return;
        var y = area.PutWrapped(0, 0, 4, fact.Help, Tone.Text);
        var waiting = Waiting(now, part, fact);
        if (waiting > 0)
            y = area.PutWrapped(0, y, 2, $"{NumberText.Plain(waiting)} check{(waiting == 1 ? " waits" : "s wait")} for it now.", Tone.Caution);
        var unread = now.Report.UnreadOf(part).Count(u => u.Values.Contains(FieldRef.To(part, fact)));
        if (unread > 0)
            y = area.PutWrapped(0, y, 2, $"{NumberText.Counted(unread, "check passes", "checks pass")} only by it, and nobody checked it.", Tone.Caution);
        var checks = ChecksByValue.Of(fact);
        y = area.PutWrapped(0, y, 8, checks.Count == 0 ? "No check reads it: papers and people do."
            : $"Read by: {string.Join("; ", checks.Select(c => c.Title))}.", Tone.Dim);
        if (PassedBy(now) is { Count: > 0 } passed)
            y = area.PutWrapped(0, y + 1, 3, $"{NumberText.Plain(passed.Count)} passed by, the last: {passed[^1].Label}.", Tone.Caution);
        area.PutWrapped(0, y + 1, Math.Max(1, area.Height - y - 1), context.Saved is null ? Left(context)
            : $"Once Enter has taken it: {(waiting > 0 && Waiting(context, part, fact) == 0 ? "no check waits for it. " : "")}{Left(context)}", Tone.Note);
    }

    private static int Waiting(ScreenContext context, Item part, Fact fact) =>
        context.Report.MissingOf(part).Count(m => m.NotChecked.FillIn!.Field == fact.Name);
}

/// <summary>Keys of the sheet in hand.</summary>
internal static class SheetInHandKeys
{
    public static readonly IReadOnlyList<IKeyAction> All =
    [
        new KeyAction<SheetInHandScreen>("enter", "Type",
            "Types the value as it stands on the sheet, and goes to the next one that is missing; from one that was checked, to the row below. An empty "
                + "line leaves it, to be listed. What stands there, or is left, is asked about: only = says that you looked for it on the sheet.", Ask)
            { Disabled = NoValue },
        new KeyAction<SheetInHandScreen>("c", "Checked", "Says that the value was checked against the maker's sheet, or not.",
            (s, context) => Transition.Save(s, KitCheck.Toggle(context.House, s.Part(context)!, s.Current(context)!))) { Disabled = NoValue },
        new KeyAction<SheetInHandScreen>("e", "Next missing", "Goes to the next value that is blank or was not checked.",
            (s, context) => (s.Next(context) ?? (s with { Selected = -1 }).Next(context)) is { } next
                ? new Transition(next) : Transition.Say(s, s.Left(context))),
        new KeyAction<SheetInHandScreen>("right", "Next part", "The sheet of the next part: first of those that the house uses, then of the others.",
            (s, context) => new Transition(Beside(s, context, 1))),
        new KeyAction<SheetInHandScreen>("left", "Part before", "The sheet of the part before.", (s, context) => new Transition(Beside(s, context, -1)))
            { OnBar = false },
        Filtering.Key<SheetInHandScreen>("values", "words of the label, or what stands there; Enter goes there"),
        .. Moves.Through<SheetInHandScreen>("value", (s, context, by) => s with { Selected = Paging.Move(s.Selected, by, s.Values(context).Count) }),
    ];

    private static string? NoValue(SheetInHandScreen s, ScreenContext context) => s.Current(context) is null ? "This part has no sheet." : null;

    private static SheetInHandScreen Beside(SheetInHandScreen s, ScreenContext context, int by)
    {
        var used = PartsInUse.Of(context.House).Select(p => p.Id).ToHashSet();
        var parts = KitScreen.Parts(context).Where(p => !SheetValues.IsNoCover(context.House, p)).OrderBy(p => !used.Contains(p.Id)).ToList();
        var at = parts.FindIndex(p => p.Id == s.PartId);
        return parts.Count == 0 ? s : SheetInHandScreen.At(parts[Paging.Move(at, by, parts.Count)], context.House);
    }

    /// <summary>Says that somebody looked: a sign that no value begins with.</summary>
    private const string LookedKey = "=";

    private static Transition Ask(SheetInHandScreen s, ScreenContext context) => Ask(s, context, null);

    /// <param name="s">The screen.</param>
    /// <param name="context">What it sees.</param>
    /// <param name="note">What was done just before, to be said above the field; null where there is nothing to say.</param>
    private static Transition Ask(SheetInHandScreen s, ScreenContext context, string? note)
    {
        var (part, fact) = (s.Part(context)!, s.Current(context)!);
        var shown = fact.ShowOf(part, context.House);
        var entry = FactEntry.For(s, context.House, part, fact);
        var asks = shown.Length > 0 && SheetInHandScreen.IsOfSheet(part, fact) && !SheetMark.Holds(part, fact)
            ? $"{fact.Label} {shown}: Enter and then {LookedKey} say that you checked it against the sheet as it stands; Tab passes it." : null;
        return Transition.Type(s, entry with
        {
            Note = note is null ? asks : $"{note} {asks ?? $"{fact.Label}: {fact.HintFor(context.House)}."}",
            InPlace = $"{part.Id}/{fact.Name}",
            GoesOn = true,
            Accept = (text, now) => Take(s, now, fact, text),
            AcceptAndNext = (text, now) => Take(s, now, fact, text, goOn: ToNextRow),
            Preview = (text, now) => s.Part(now) is { } there && Taken(now.House, there, fact, text) is { Ok: true } draft ? now.With(draft.Value) : now,
        });
    }

    /// <summary>Takes a value and goes on: to the next one that is open, or as a key says.</summary>
    private static Core.Result<Transition> Take(SheetInHandScreen s, ScreenContext context, Fact fact, string text,
        Func<SheetInHandScreen, ScreenContext, Transition>? goOn = null)
    {
        if (s.Part(context) is not { } part)
            return Transition.Say(s, "This part is no longer in the house.");
        // Whoever is on a value that was checked puts right what was typed: the row below may be next.
        var then = goOn ?? (SheetInHandScreen.IsOfSheet(part, fact) && !SheetInHandScreen.Open(part, fact) ? ToNextRow : (screen, now) => GoOn(screen, now));
        Transition Then(IScreen screen, ScreenContext after) => then(((SheetInHandScreen)screen).On(fact, after), after);
        var shown = fact.ShowOf(part, context.House);
        if (text.Trim().Length == 0 && shown.Length == 0)
        {
            // Which conductor is plus is for the house to say where no sheet does: that is no value that a sheet lacks.
            return goOn is not null || !SheetInHandScreen.IsOfSheet(part, fact) || SheetMark.Holds(part, fact) || fact == CableTypeFacts.Plus
                ? then(s, context)
                : Looked($"Did you look for {fact.Label} on the sheet, and it is not there?", KitCheck.NotFound(context.House, part, fact), Then);
        }
        if (EditionEntry.For(s, context.House, part, fact, text, Then) is { } which)
            return Transition.Type(s, which);
        if (text.Trim() != shown)
            return Taken(context.House, part, fact, text).Then<Transition>(d => new Transition(s, new Ask.Save(d, Then)));
        // Tab only passes by: to say that a value was checked is for Enter.
        return goOn is not null || !SheetInHandScreen.IsOfSheet(part, fact) || SheetMark.Holds(part, fact)
            ? then(s, context)
            : Looked($"{fact.Label} {shown}: does the sheet in hand say so?", Taken(context.House, part, fact, text), (screen, now) =>
                GoOn(((SheetInHandScreen)screen).On(fact, now), now, $"{fact.Label} {shown} is said to be checked now; Esc and u take that back."));

        // Enter that is pressed twice, or before the value was seen, must not say that somebody looked at it, nor the first letter of what is typed now.
        Transition Looked(string question, Core.Result<Core.History.Draft> saves, Func<IScreen, ScreenContext, Transition> next) =>
            new(s, new Ask.Confirm($"{question} {LookedKey} says so; what else you type goes into its field.", LookedKey,
                new Transition(s, new Ask.Save(saves, next)))
            { OnNo = Ask(s, context) });
    }

    /// <summary>What Enter saves of a text: a value that is read off the sheet is checked by that, also where it stands there already.</summary>
    private static Core.Result<Core.History.Draft> Taken(House house, Item part, Fact fact, string text) =>
        KitCheck.WaitFor(house, part, fact, text).Count > 0 ? new Core.Refusal("Which edition it is, is asked first.")
        : !SheetInHandScreen.IsOfSheet(part, fact) ? SetFact.Typed(house, part, fact, text)
        : text.Trim() != fact.ShowOf(part, house) ? KitCheck.ReadOff(house, part, fact, text)
        : SheetMark.Holds(part, fact) ? new Core.Refusal($"{fact.Label} is checked already.")
        : KitCheck.Toggle(house, part, fact);

    /// <summary>Tab goes to the next value, as on a sheet of details, whether it is there or not.</summary>
    private static Transition ToNextRow(SheetInHandScreen s, ScreenContext context) => s.Selected + 1 < s.Values(context).Count
        ? Ask(s with { Selected = s.Selected + 1 }, context) : Through(s, context, null);

    private static Transition GoOn(SheetInHandScreen s, ScreenContext context, string? note = null) => s.Next(context) is { } next ? Ask(next, context, note)
        : Through(s, context, note);

    /// <summary>At the end of a sheet, back to its head.</summary>
    private static Transition Through(SheetInHandScreen s, ScreenContext context, string? note) =>
        Transition.Say(s with { Selected = 0 }, $"{(note is null ? "" : $"{note} ")}{s.Left(context)} Right goes on to the next part.");
}
