using TrimOut.Core;
using TrimOut.Core.Decisions;
using TrimOut.Core.Houses;
using TrimOut.Core.Kits;
using TrimOut.Core.Units;
using TrimOut.Screens.Frames;
using TrimOut.Screens.Shell;

namespace TrimOut.Screens.HousePicker;

/// <summary>Houses opened lately, sample jobs, and a new one.</summary>
internal sealed record PickerScreen(IReadOnlyList<HouseChoice> Houses, int Selected) : IFiltered
{
    public string Title => "Houses";

    public IReadOnlyList<IKeyAction> Keys => PickerKeys.All;

    public string Search { get; init; } = "";

    /// <summary>The houses that are shown.</summary>
    public IReadOnlyList<HouseChoice> Shown => Search.Length == 0 ? Houses : [.. Houses.Where(h => Filtering.Fits($"{h.Name} {h.About}", Search))];

    public (int Shown, int All) Count(ScreenContext context) => (Shown.Count, Houses.Count);

    public IScreen Searching(string search, ScreenContext context)
    {
        var to = this with { Search = search };
        return to with { Selected = Filtering.Keep(Shown, Selected, to.Shown, h => h) };
    }

    public HouseChoice? Current => Shown is var houses && Selected < houses.Count ? houses[Selected] : null;

    /// <summary>Reads the user's kit folder, which may change while the picker stands.</summary>
    public Func<IReadOnlyList<KeptPart>> Kept { get; init; } = () => [];

    /// <summary>Reads another folder of parts, which was typed.</summary>
    public Func<string, Result<IReadOnlyList<KeptPart>>> KeptIn { get; init; } = folder => new Refusal($"There is no folder {folder}.");

    public static PickerScreen At(IDesk desk) => new(desk.Houses, 0) { Kept = () => desk.Kit, KeptIn = desk.KitIn };

    public void Draw(Area area, ScreenContext context, Typing? typing)
    {
        area.Put(2, 1, "TrimOut tracks wired motorized window coverings through a house,", Tone.Text);
        area.Put(2, 2, "from the framing walk to the owner's binder.", Tone.Text);
        (area, var card) = Wide.Split(area, context.Glyphs);
        var firstTime = card is null && Houses.All(h => h.Sample);
        if (card is { } beside)
            FirstTime.Draw(beside, 1);
        var houses = Shown;
        var rows = Rows(houses);
        var about = Math.Min(8 + houses.Select(h => TextWidth.Of(h.Name)).DefaultIfEmpty().Max(), area.Width / 2);
        var list = area.Part(2, Top, area.Width - 4, Math.Min(rows.Count, area.Height - Top - Below - (firstTime ? FirstTime.Height + 1 : 0)));
        foreach (var (line, at) in Paging.Rows(list, rows.Count, Math.Max(0, rows.FindIndex(r => r.At == Selected)),
            at => rows[at].At is { } house ? this with { Selected = house } : null))
        {
            if (rows[at].At is not { } row)
            {
                list.PutFit(0, line, list.Width, rows[at].Heading, Tone.Heading);
                continue;
            }
            var tone = row == Selected ? Tone.Selected : Tone.Text;
            list.PutFit(0, line, list.Width, $" {(row == Selected ? context.Glyphs.Arrow : " ")} {houses[row].Name}", tone);
            list.PutFit(about - 2, line, list.Width - about + 2, houses[row].About, tone);
        }
        var y = Top + list.Height;
        if (firstTime)
            y = FirstTime.Draw(area, y + 1);
        area.PutWrapped(2, y + 1, 3,
            "Mains work is for a licensed electrician only. The code in force and the makers' sheets govern over anything said here.", Tone.Dim);
    }

    /// <summary>The line that the list begins at.</summary>
    private const int Top = 4;

    /// <summary>Lines below the list, for what is said of mains work.</summary>
    private const int Below = 3;

    /// <summary>A heading above your houses and above the sample jobs, and the houses by their place in the list.</summary>
    private static List<(string Heading, int? At)> Rows(IReadOnlyList<HouseChoice> houses)
    {
        var rows = new List<(string, int?)>();
        for (var at = 0; at < houses.Count; at++)
        {
            if (at == 0 || houses[at].Sample != houses[at - 1].Sample)
                rows.Add((houses[at].Sample ? "Sample jobs" : "Your houses", null));
            rows.Add(("", at));
        }
        return rows;
    }
}

/// <summary>Keys of the house picker.</summary>
internal static class PickerKeys
{
    public static readonly IReadOnlyList<IKeyAction> All =
    [
        new KeyAction<PickerScreen>("enter", "Open", "Opens the house; a sample job is copied to a house file of its own first.",
            (s, _) => new Transition(s, new Ask.Enter(d => d.Open(s.Current!.Path), s.Current!.Path)))
            { Disabled = (s, _) => s.Current is null ? "There is no house to open. Press n to begin one." : null },
        new KeyAction<PickerScreen>("n", "New house", "Begins a house.", (s, _) => Transition.Type(s, AskName(s))),
        new KeyAction<PickerScreen>("O", "Open a path", "Opens a house file by its path.",
            (s, _) => Transition.Type(s, new Entry("House file", "", "the path of a .trimout file or of a sample folder", (text, _) => text.Trim().Length == 0
                ? new Refusal("Type the path of a house file.")
                : new Transition(s, new Ask.Enter(d => d.Open(text.Trim()), text.Trim()))))),
        new KeyAction<PickerScreen>("J", "All houses", "Shows all houses of your folders: phases, stops, who waits, what is due.",
            (s, _) => new Transition(s, Firm.FirmScreen.Find())),
        Filtering.Key<PickerScreen>("houses", "name, folder, or what is said of it"),
        .. Moves.Through<PickerScreen>("house", (s, _, by) => s with { Selected = Paging.Move(s.Selected, by, s.Shown.Count) }),
    ];

    private static Entry AskName(PickerScreen screen) => new("Name of the house", "", "what everybody calls the job",
        (name, _) => name.Trim().Length == 0 ? new Refusal("Type a name.") : Transition.Type(screen, AskUnits(screen, name.Trim())));

    private static Entry AskUnits(PickerScreen screen, string name) => new("Units", "inches", "inches or millimeters",
        (text, _) => NewHouse.ReadUnits(text).Then<Transition>(units =>
        {
            var kept = screen.Kept().Where(k => !k.Older).ToLookup(k => k.Part.Ok);
            var unread = kept[false].ToList();
            return kept[true].Any() ? Transition.Type(screen, AskKit(screen, name, units, [.. kept[true]], unread))
                : unread.Count == 0 ? Begin(screen, name, units, [])
                : new Transition(screen, new Ask.Confirm($"{Unread(unread)} y begins with a blank kit, any other key goes back to the units.",
                    Ask.Confirm.AlsoYes, Begin(screen, name, units, []))
                { OnNo = Transition.Type(screen, AskUnits(screen, name)) });
        }))
    {
        Options = Core.Facts.HouseFacts.Units.Options(Core.Houses.House.Empty),
    };

    /// <summary>Asks whether the house begins with the parts that are kept, or with blanks.</summary>
    private static Entry AskKit(PickerScreen screen, string name, DisplayUnits units, List<KeptPart> kept, List<KeptPart> unread) => new("Kit", Own,
        $"{Own}: {Parts(kept)} from your folder, no blank ones of their sorts; {Blank}: no values; or the path of another folder",
        (text, _) => text.Trim() is not { Length: > 0 } typed ? new Refusal($"Choose: {Own}, or {Blank}; or type the path of another folder.")
            : Own.StartsWith(typed, StringComparison.OrdinalIgnoreCase) ? OneOfEach(screen, name, units, kept)
            : Blank.StartsWith(typed, StringComparison.OrdinalIgnoreCase) ? Begin(screen, name, units, [])
            : screen.KeptIn(typed).Then(parts => FromFolder(screen, name, units, typed, parts)))
    {
        Options = [new Core.Facts.Option(Own, Own), new Core.Facts.Option(Blank, Blank)],
        Note = string.Join(' ', (string[])[.. unread.Count == 0 ? Array.Empty<string>()
            : [$"{Unread(unread)} {Own} has the {Parts(kept)} of the other files; {Blank} has no values; "
                + "or type the path of another folder."],
            .. WhyNoneCounts(kept)]) is { Length: > 0 } note ? note : null,
    };

    /// <summary>Begins with the parts of another folder; what can't be read of it, or does not count as checked, is said first.</summary>
    private static Result<Transition> FromFolder(PickerScreen screen, string name, DisplayUnits units, string folder, IReadOnlyList<KeptPart> found)
    {
        var kept = found.ToLookup(k => k.Part.Ok);
        var unread = kept[false].ToList();
        if (!kept[true].Any())
            return new Refusal(unread.Count == 0 ? $"There is no part in {folder}."
                : $"No part in {folder} can be read: {unread[0].Part.Reason}{Others(unread)}");
        var begin = OneOfEach(screen, name, units, [.. kept[true]], folder);
        List<string> first = [.. unread.Count == 0 ? Array.Empty<string>() : [Unread(unread, folder)], .. WhyNoneCounts(kept[true])];
        return first.Count == 0 ? begin
            : new Transition(screen, new Ask.Confirm($"{string.Join(' ', first)} y begins with the {Parts([.. kept[true]])} of "
                + $"{(unread.Count == 0 ? "it" : "the other files")}, any other key goes back to the units.", Ask.Confirm.AlsoYes, begin)
            { OnNo = Transition.Type(screen, AskUnits(screen, name)) });
    }

    private static IEnumerable<string> WhyNoneCounts(IEnumerable<KeptPart> kept) => kept.Select(k => k.Part.Value.WhyNoneCounts).OfType<string>().Distinct();

    /// <summary>Which files of the kit folder can't be read, and why: the house begins without their parts.</summary>
    private static string Unread(List<KeptPart> unread, string? folder = null) => $"Not read, so not in it: {unread[0].Part.Reason}{Others(unread)}"
        + (unread.Count > 1 && folder is null ? " O on the kit (9) tells why." : "");

    /// <summary>The other files by their names, as many as a question has room for.</summary>
    private static string Others(List<KeptPart> unread) => unread.Count == 1 ? ""
        : $" Nor {string.Join(", ", unread.Skip(1).Take(MostNames).Select(k => k.File))}"
            + (unread.Count - 1 > MostNames ? $" and {NumberText.Plain(unread.Count - 1 - MostNames)} more." : ".");

    private const int MostNames = 5;

    /// <summary>Begins with the parts that are kept; where two files are one part, asks first which of them it is to be.</summary>
    private static Transition OneOfEach(PickerScreen screen, string name, DisplayUnits units, List<KeptPart> kept, string folder = "your kit folder")
    {
        if (Same(kept).FirstOrDefault(g => g.Count() > 1) is not { } twice)
            return Begin(screen, name, units, [.. kept.Select(k => k.Part.Value)]);
        var part = twice.First().Part.Value;
        var files = twice.Select(k => k.File).ToList();
        var named = string.Join(" and ", twice.Select(k => $"{k.File} ({(k.Part.Value.Edition is { } e ? $"edition {e}" : "no edition")})"));
        return Transition.Type(screen, new Entry($"Which file is {KebabCase.Of(part.Kind).Replace('-', ' ')} {part.Name}", files[0],
            $"{folder} has it in {named}: "
                + "Up and Down choose, Enter takes it",
            (text, _) => files.Contains(text.Trim())
                ? OneOfEach(screen, name, units, [.. kept.Where(k => !files.Contains(k.File) || k.File == text.Trim())], folder)
                : new Refusal($"Choose one of: {string.Join(", ", files)}."))
        {
            Options = [.. files.Select(f => new Core.Facts.Option(f, f))],
        });
    }

    private static IEnumerable<IEnumerable<KeptPart>> Same(IEnumerable<KeptPart> kept) =>
        kept.GroupBy(k => k.Part.Value.Kind).SelectMany(k => k.GroupBy(p => p.Part.Value.Name, SameName.Comparer));

    private const string Own = "my kit";

    private const string Blank = "blank";

    private static string Parts(List<KeptPart> kept) => NumberText.Counted(Same(kept).Count(), "part");

    private static Transition Begin(PickerScreen screen, string name, DisplayUnits units, IReadOnlyList<PartSheet> kit) =>
        new(screen, new Ask.Enter(d => d.Create(name, units, kit)));
}
