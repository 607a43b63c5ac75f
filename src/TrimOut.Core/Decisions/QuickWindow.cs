using System.Text.RegularExpressions;
using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Houses;
using TrimOut.Core.Units;

namespace TrimOut.Core.Decisions;

/// <summary>One line that adds a window at the framing walk: what is not said carries over from the window before.</summary>
/// <remarks>
/// <c>W12 roller left 36x60 SW ladder inside @Breakfast nook</c>: the words in any order, the room last after <c>@</c>.
/// A room that is not there yet is added, on the floor after the slash (<c>@Kitchen/Upper</c>) or that of the room before.
/// Where several units hang in the opening, <c>2 units</c>. Without a tag the next free one is taken; <c>out: reason</c> leaves the window out on purpose.
/// </remarks>
public sealed partial record QuickWindow
{
    private const string LeftOutMark = "out:";

    private const int MostUnits = 9;

    // "no", "in" and "of" may be words of a kind's name, and of a room's.
    private const int ShortestOfKind = 4;

    /// <summary>The tag.</summary>
    public required string Tag { get; init; }

    /// <summary>The room, of the house or to be added; null when there is none yet.</summary>
    public RoomChoice? Room { get; init; }

    /// <summary>The kind's id.</summary>
    public string? Kind { get; init; }

    /// <summary>Lead side.</summary>
    public Side? Lead { get; init; }

    /// <summary>What drives it.</summary>
    public PowerSource? Power { get; init; }

    /// <summary>Rough width.</summary>
    public Length? Width { get; init; }

    /// <summary>Rough height.</summary>
    public Length? Height { get; init; }

    /// <summary>Where it looks out to.</summary>
    public Azimuth? Facing { get; init; }

    /// <summary>What it takes to reach its head.</summary>
    public Reach? Reach { get; init; }

    /// <summary>Inside or outside.</summary>
    public Mount? Mount { get; init; }

    /// <summary>How many units hang in it, 1 to 9.</summary>
    public int Units => SaidUnits ?? 1;

    private int? SaidUnits { get; init; }

    /// <summary>Why it is left out; null when it gets a covering.</summary>
    public string? LeftOutBecause { get; init; }

    /// <summary>What the words of a line say, each once, with what it is called.</summary>
    private static readonly (string Label, Func<QuickWindow, object?> Of)[] Details =
    [
        Called(UnitFacts.Kind, w => w.Kind), Called(UnitFacts.LeadSide, w => w.Lead), Called(UnitFacts.Power, w => w.Power),
        Called(WindowFacts.RoughWidth, w => w.Width), Called(WindowFacts.RoughHeight, w => w.Height), Called(WindowFacts.Facing, w => w.Facing),
        Called(WindowFacts.Reach, w => w.Reach), Called(WindowFacts.Mount, w => w.Mount), ("Number of units", w => w.SaidUnits),
    ];

    /// <summary>A size as it is typed in a house.</summary>
    public static string SizeExample(House house) => house.DisplayUnits == DisplayUnits.Inches ? "36x60" : "900x1500";

    /// <summary>Reads a line.</summary>
    /// <param name="line">What was typed.</param>
    /// <param name="house">The house; its last window is carried over from.</param>
    public static Result<QuickWindow> Read(string line, House house)
    {
        var before = CarriedOver(house);
        var window = new QuickWindow { Tag = before.Tag, Room = before.Room };
        var text = line.Trim();
        if (text.IndexOf(LeftOutMark, StringComparison.OrdinalIgnoreCase) is >= 0 and var mark)
        {
            var reason = text[(mark + LeftOutMark.Length)..].Trim();
            if (reason.Length == 0)
                return new Refusal("Say after out: why the window is left out.");
            // Its room is that of the window before; nothing else is carried over to a window that gets no covering.
            before = window;
            text = text[..mark];
            if (reason.LastIndexOf('@') is > 0 and var of)
                (text, reason) = ($"{text} {reason[of..]}", reason[..of].Trim());
            window = window with { LeftOutBecause = reason };
        }
        if (text.IndexOf('@', StringComparison.Ordinal) is >= 0 and var at)
        {
            if (text[(at + 1)..].Trim() is not { Length: > 0 } room)
                return new Refusal("Say after @ which room it is in.");
            var choice = RoomNames.Read(room, house, window.Room?.Floor);
            if (!choice.Ok)
                return new Refusal(choice.Reason!);
            window = window with { Room = choice.Value };
            if (window.WordsOfNewRoom(house).FirstOrDefault(w => IsOfTheWindow(w, house)) is { } word)
            {
                return new Refusal($"\"{word}\" is taken for a part of {choice.Value}, which would be new: the room comes last, behind all else. "
                    + "A room that is called so is added under r on the job sheet.");
            }
            text = text[..at];
        }
        var words = QuickWords.Of(text);
        var saidBy = new Dictionary<string, string>(StringComparer.Ordinal);
        var tagAt = -1;
        for (var number = 0; number < words.Length; number++)
        {
            var understood = Understand(window, words[number], house);
            // The line begins with the next free tag; one that is typed after it is the one that is meant.
            if (!understood.Ok && (number == 0 || ((tagAt < 0 || number == 1) && char.IsAsciiLetter(words[number][0]))) && QuickWords.MayBeTag(words[number]))
                (understood, tagAt) = (window with { Tag = words[number] }, number);
            if (!understood.Ok)
                return FloorMeant(words, number, house) ?? understood;
            foreach (var (label, of) in Details)
            {
                if (of(understood.Value) is not { } now || now.Equals(of(window)))
                    continue;
                if (!saidBy.TryAdd(label, words[number]) && !understood.Value.IsMoreOfTheKind(house, saidBy[label]))
                    return SaidTwice.Refuse(label, Spaced(saidBy[label]), Spaced(words[number]));
            }
            window = understood.Value;
        }
        return Tags.Refuse(house, window.Tag) is { } taken ? taken : window.Over(before);
    }

    /// <summary>What is said here, and of all else what is said there.</summary>
    private QuickWindow Over(QuickWindow before) => this with
    {
        Kind = Kind ?? before.Kind,
        Lead = Lead ?? before.Lead,
        Power = Power ?? before.Power,
        Width = Width ?? before.Width,
        Height = Height ?? before.Height,
        Facing = Facing ?? before.Facing,
        Reach = Reach ?? before.Reach,
        Mount = Mount ?? before.Mount,
    };

    /// <summary>Whether an earlier word is one of the name of the kind too: "cellular small" is a small cellular, where there is a cellular as well.</summary>
    private bool IsMoreOfTheKind(House house, string word) => Kind is { } kind && house.Find(kind) is { } item && NameWords.Begin(house.NameOf(item), word);

    /// <summary>A word as a person writes it: what is one word here may have been two.</summary>
    private static string Spaced(string word) => Several().Match(word) is { Success: true } several ? $"{several.Groups["n"].Value} units" : word;

    private static (string Label, Func<QuickWindow, object?> Of) Called(Fact fact, Func<QuickWindow, object?> of) => (fact.Label, of);

    /// <summary>The change that adds it.</summary>
    public Result<Draft> Add(House house)
    {
        return AddItems.Window(house, Tag, Room?.Id).Then<Draft>(draft =>
        {
            var (window, unit) = (Id(draft, ItemKind.Window), Id(draft, ItemKind.Unit));
            if (Room is { Id: null } room)
            {
                if (RoomNames.Refuse(house, room.Name, room.Floor) is { } taken)
                    return taken;
                draft = draft.WithRoom(house, room, out var id).Put(window, WindowFacts.Room, new ItemRef(id));
            }
            if (LeftOutBecause is not null)
                draft = draft.Put(window, WindowFacts.Covered, YesNo.No).Put(window, WindowFacts.NotCoveredBecause, LeftOutBecause);
            for (var more = 2; more <= Units; more++)
                draft = OfUnit(draft.WithUnit(window, more, out var other), other);
            if (AsBefore(house) is (var before, { Count: > 0 } alike))
                draft = draft with { What = $"{draft.What}; as {before}: {string.Join(", ", alike)}" };
            return OfUnit(draft, unit)
                .PutIf(window, WindowFacts.RoughWidth, Width)
                .PutIf(window, WindowFacts.RoughHeight, Height)
                .PutIf(window, WindowFacts.Facing, Facing)
                .PutIf(window, WindowFacts.Reach, Reach)
                .PutIf(window, WindowFacts.Mount, Mount);
        });
    }

    private Draft OfUnit(Draft draft, string unit) => draft
        .PutIf(unit, UnitFacts.Kind, Kind is null ? null : (ItemRef?)new ItemRef(Kind))
        .PutIf(unit, UnitFacts.LeadSide, Lead)
        .PutIf(unit, UnitFacts.Power, Power);

    /// <summary>What was understood, in one line.</summary>
    public string Echo(House house)
    {
        var units = house.DisplayUnits;
        string?[] parts =
        [
            Tag,
            Room is not { } room ? "no room yet" : room + (room.Id is not null ? "" : NewFloor(house, room) ? " (new room, new floor)" : " (new room)"),
            LeftOutBecause is null ? null : "left out: " + LeftOutBecause,
            Units == 1 ? null : NumberText.Counted(Units, "unit"),
            Kind is { } kind && house.Find(kind) is { } item ? house.NameOf(item) : null,
            Lead is { } lead ? KebabCase.Of(lead) : null,
            Width is { } w && Height is { } h ? $"{w.Show(units)} x {h.Show(units)}" : null,
            Facing?.ToString(),
            Reach is { } reach ? KebabCase.Of(reach) : null,
            Mount is { } mount ? KebabCase.Of(mount) : null,
            Power is { } power ? KebabCase.Of(power) : null,
        ];
        return string.Join(", ", parts.OfType<string>());
    }

    /// <summary>The window before, and what this one has as it has: carried over, or typed alike.</summary>
    private (string Tag, IReadOnlyList<string> Labels)? AsBefore(House house)
    {
        if (Before(house) is not { } last)
            return null;
        var before = CarriedOver(house);
        return (last.Tag,
        [
            .. Room is not null && Room == before.Room ? [WindowFacts.Room.Label.ToLowerInvariant()] : Array.Empty<string>(),
            .. Details.Where(d => d.Of(this) is { } said && said.Equals(d.Of(before))).Select(d => d.Label.ToLowerInvariant()),
        ]);
    }

    private static Window? Before(House house) => house.Windows.Where(w => !w.LeftOut).OrderBy(w => w.Item.Place).LastOrDefault();

    /// <summary>A word about the window that stands behind its new room, and so became the end of its name or floor; null where none does.</summary>
    /// <param name="house">The house.</param>
    public string? SwallowedBy(House house) =>
        Room is { Id: null } room && (room.Floor is { } floor && NewFloor(house, room) ? floor : room.Name)
            .Split(' ', StringSplitOptions.RemoveEmptyEntries) is [_, .., var last]
        && Understand(new QuickWindow { Tag = Tag }, last, house) is { Ok: true, Value: { Reach: null, Facing: null } } ? last : null;

    /// <summary>What stands behind the first word of a new room's name and of a new floor; the first word may be any.</summary>
    private IEnumerable<string> WordsOfNewRoom(House house) => Room is not { Id: null } room ? []
        : QuickWords.Of(room.Name).Skip(1).Concat(room.Floor is { } floor && NewFloor(house, room) ? QuickWords.Of(floor).Skip(1) : []);

    /// <summary>Whether a word, written out, says a size, a number of units, a side, a mount or a kind.</summary>
    private static bool IsOfTheWindow(string word, House house) => Size().IsMatch(word) || Several().IsMatch(word)
        || Whole<Side>(word) || Whole<Mount>(word)
        || (word.Length >= ShortestOfKind && house.ItemsOf(ItemKind.CoveringKind)
            .Any(k => house.NameOf(k).Split(' ', '-').Contains(word, SameName.Comparer)));

    private static bool Whole<T>(string word)
        where T : struct, Enum => Enum.GetValues<T>().Any(v => word.Equals(KebabCase.Of(v), StringComparison.OrdinalIgnoreCase));

    private static bool NewFloor(House house, RoomChoice room) => room.Floor is { } floor && !house.Floors.Contains(floor, SameName.Comparer);

    private static QuickWindow CarriedOver(House house)
    {
        var last = Before(house);
        var unit = last?.Units.FirstOrDefault();
        return new QuickWindow
        {
            Tag = Tags.Next(house),
            Room = last?.Room is { } room ? RoomChoice.Of(room) : null,
            Kind = unit?.Kind?.Id,
            Lead = unit?.LeadSide,
            Power = unit?.Power,
            Width = last?.RoughWidth,
            Height = last?.RoughHeight,
            Facing = last?.Item.Get(WindowFacts.Facing),
            Reach = last?.Reach,
            Mount = last?.Mount,
        };
    }

    /// <summary>The refusal of a word that most likely names a floor of the house; null for any other word.</summary>
    private static Refusal? FloorMeant(string[] words, int number, House house)
    {
        var word = words[number];
        return IsFloor(number - 1) || IsFloor(number + 1) || house.Floors.Any(f => NameWords.Begin(f, word)) ? new Refusal(
            $"\"{word}\" is not understood. A floor of the house stands last, behind the room: @Kitchen/Upper. "
                + "\"floor\" alone says that one reaches the window from the floor.") : null;

        bool IsFloor(int at) => at >= 0 && at < words.Length && words[at].Equals("floor", StringComparison.OrdinalIgnoreCase);
    }

    private static Result<QuickWindow> Understand(QuickWindow window, string word, House house)
    {
        if (Size().Match(word) is { Success: true } size)
        {
            return WindowFacts.RoughWidth.ReadTyped(size.Groups["w"].Value, house).Then(w => WindowFacts.RoughHeight.ReadTyped(size.Groups["h"].Value, house)
                .Then<QuickWindow>(h => window with { Width = Stored(w), Height = Stored(h) }));
        }
        if (Several().Match(word) is { Success: true } several)
        {
            var units = several.Groups["n"].Value[0] - '0';
            return units == 0 ? new Refusal("A window has 1 to 9 units; out: and the reason leaves it out.") : window with { SaidUnits = units };
        }
        if (Azimuth.Read(word) is { Ok: true } facing && !word.All(char.IsAsciiDigit))
            return window with { Facing = facing.Value };
        if (Choice<Side>(word, house, UnitFacts.LeadSide) is { } side)
            return window with { Lead = side };
        if (Choice<Reach>(word, house, WindowFacts.Reach) is { } reach)
            return window with { Reach = reach };
        if (Choice<Mount>(word, house, WindowFacts.Mount) is { } mount)
            return window with { Mount = mount };
        if (Choice<PowerSource>(word, house, UnitFacts.Power) is { } power)
            return window with { Power = power };
        var any = house.ItemsOf(ItemKind.CoveringKind).Where(k => NameWords.Begin(house.NameOf(k), word)).ToList();
        // "wood blind" is two words of one kind.
        if (window.Kind is not null && any.Any(k => k.Id == window.Kind))
            return window;
        var kinds = any.Where(k => house.NameOf(k).StartsWith(word, StringComparison.OrdinalIgnoreCase)).ToList();
        if (kinds.Count == 0)
            kinds = any;
        if (kinds.Count == 1)
            return window with { Kind = kinds[0].Id };
        return kinds.Count > 1
            ? new Refusal($"\"{word}\" fits more than one kind: {string.Join(", ", kinds.Select(house.NameOf))}.")
            : new Refusal(
                $"\"{word}\" is not understood. Kinds here: {string.Join(", ", house.ItemsOf(ItemKind.CoveringKind).Select(house.NameOf))}. " +
                    $"Then left or right, {SizeExample(house)}, SW, ladder, inside, panel, 2 units, and the room last after @.");
    }

    private static T? Choice<T>(string word, House house, Fact<T> fact)
        where T : struct, Enum => word.Length > 0 && fact.ReadTyped(word, house) is { Ok: true } stored ? KebabCase.Read<T>(stored.Value) : null;

    private static Length Stored(string stored) => LengthText.Read(stored, DisplayUnits.Millimetres).Value;

    private static string Id(Draft draft, ItemKind kind) => draft.Edits.OfType<Edit.Add>().First(a => a.Kind == kind).Item;

    [GeneratedRegex("^(?<n>[0-9])units?$", RegexOptions.IgnoreCase)]
    private static partial Regex Several();

    [GeneratedRegex("^(?<w>[^x×]*[0-9\"'½¼¾mn])[x×](?<h>[0-9½¼¾].*)$", RegexOptions.IgnoreCase)]
    private static partial Regex Size();
}
