using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;
using TrimOut.Core;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Houses;

namespace TrimOut.HouseFile.Schedules;

/// <summary>Turns the rows of a schedule into one change, row by row, and keeps a list of what it could not read.</summary>
internal sealed partial class SchedulePlanner(HouseLog log, ColumnMap map, ScheduleOptions options)
{
    private static readonly (ScheduleField Field, Fact Fact)[] UnitColumns =
        [(ScheduleField.Kind, UnitFacts.Kind), (ScheduleField.LeadSide, UnitFacts.LeadSide), (ScheduleField.Power, UnitFacts.Power)];

    /// <summary>Details that are chosen of a few, by the beginning of a name too.</summary>
    private static readonly Fact[] Chosen = [.. UnitColumns.Select(c => c.Fact), WindowFacts.Mount, WindowFacts.Reach];

    private readonly House _house = log.House;
    private const int WordsOfNote = 3;

    /// <summary>The fewest letters of a word alone in its row that heads those below, such as a floor or a room: A, B and C are tags of offices.</summary>
    private const int LettersOfHeading = 4;

    /// <summary>The fewest letters by which a kind is told, unless they are its whole name: an office's own types are called A, B and C.</summary>
    private const int LettersOfKind = 3;

    private static readonly string[] TotalWords = ["total", "totals", "grand total", "subtotal", "subtotals", "sum", "summe", "gesamt", "gesamtsumme",
        "zwischensumme", "suma"];
    private readonly ImmutableArray<PlannedWindow>.Builder _windows = ImmutableArray.CreateBuilder<PlannedWindow>();
    private readonly ImmutableArray<ScheduleProblem>.Builder _problems = ImmutableArray.CreateBuilder<ScheduleProblem>();
    private readonly ImmutableArray<string>.Builder _understood = ImmutableArray.CreateBuilder<string>();
    private readonly Dictionary<string, int> _lineOfTag = new(SameName.Comparer);
    private readonly List<RoomChoice> _newRooms = [];
    private readonly List<string> _newRoomNames = [];
    private readonly ImmutableArray<RevisedValue>.Builder _revised = ImmutableArray.CreateBuilder<RevisedValue>();
    private readonly HashSet<(ScheduleField, string)> _readAs = [];
    private readonly List<(string Tag, WindowLook Here, WindowLook There)> _looks = [];
    private HashSet<ChangeId>? _imports;
    private ImportedTags? _tags;
    private Draft _draft = new("Import");

    /// <summary>The tags of all rows, by which it is told whether a window that was renamed here is still meant.</summary>
    public IReadOnlySet<string> TagsOfFile { get; init; } = new HashSet<string>();

    /// <summary>How many windows there are so far.</summary>
    public int Windows => _windows.Count;

    /// <summary>Takes one row.</summary>
    public void Add(SheetRow row)
    {
        if (row.IsBlank)
            return;
        if (NoWindow(row) is { } what)
        {
            _understood.Add(string.Create(CultureInfo.InvariantCulture, $"line {row.Line} left out: it is {what}"));
            return;
        }
        if (!(Read(row, ScheduleField.Tag, WindowFacts.Tag, rowLost: true) is { } tag))
            return;
        if (row.Cells.Skip(map.Header.Cells.Count).FirstOrDefault(c => c.Length > 0) is { } more)
            _problems.Add(new ScheduleProblem(row.Line, "behind the last", $"\"{more}\" has no header. A comma in a text without quotes moves what follows "
                + "it: look whether the row's values are right.", RowLost: false)
            { Taken = true });
        if (row.Cells.FirstOrDefault(c => c.Contains('\ufffd', StringComparison.Ordinal)) is { } lost)
            _problems.Add(new ScheduleProblem(row.Line, map.Header.At(row.Cells.ToList().IndexOf(lost)), $"\"{lost}\" has a sign that was lost before it came "
                + "here (U+FFFD): look at it.", RowLost: false)
            { Taken = true });
        if (DateTag().IsMatch(tag))
            _problems.Add(new ScheduleProblem(row.Line, map.HeaderOf(ScheduleField.Tag), $"\"{tag}\" is a date, as a spreadsheet makes one of a tag "
                + "such as 3-4: look at what it is on the drawing.", RowLost: false)
            { Taken = true });
        var count = Count(row);
        for (var one = 1; one <= count; one++)
            AddWindow(row, count == 1 ? tag : string.Create(CultureInfo.InvariantCulture, $"{tag}-{one}"), quiet: one > 1);
    }

    /// <summary>Says that nothing can be read before somebody says which column holds what.</summary>
    public void SayNothingToRead() => _problems.Add(new ScheduleProblem(map.Header.Line, ScheduleField.Tag.Name,
        $"no column is known to hold {(map.HasTags ? "anything of the windows but their tags" : "the windows' tags")}. There are: "
            + $"{string.Join(", ", map.Unused.Take(16))}. Say in the list of columns which is which.",
        RowLost: true)
    { NothingRead = true });

    /// <summary>The plan.</summary>
    public SchedulePlan Finish(string what)
    {
        ImmutableArray<string> missing = !options.Revised ? []
            : [.. _house.Windows.Where(w => !w.LeftOut).Select(w => w.Tag).Where(t => !_lineOfTag.ContainsKey(t))];
        KeepInPlace(missing);
        SayLengthsUnused();
        var taken = _revised.Count(r => r.KeptBecause is null);
        SayAlike(missing);
        return new SchedulePlan(_draft with { What = $"{what}: {TakeRows.Counted(_windows.Count, taken)}" }, _windows.ToImmutable(), [.. _newRoomNames],
            _problems.ToImmutable(), [.. map.Misfits.Select(m => $"not as before: {m.TrimEnd('.')}"), .. map.Remarks, .. _understood],
            [.. map.Used(options.BareUnit ?? (_house.DisplayUnits == Core.Units.DisplayUnits.Inches ? "in" : "mm"))], [.. map.Unused])
        {
            Revised = _revised.ToImmutable(),
            Missing = missing,
            Standing = missing.Select(t => (Tag: t, Is: StandsBy.WhatIsThere(_house.FindTag(t)!))).Where(m => m.Is is not null)
                .ToImmutableDictionary(m => m.Tag, m => m.Is!),
        };
    }

    /// <summary>A column with a unit in its header holds lengths: while none is known for a size, one that is taken for nothing may be it.</summary>
    private void SayLengthsUnused()
    {
        if (map.Has(ScheduleField.Size) || (map.Has(ScheduleField.Width) && map.Has(ScheduleField.Height)))
            return;
        foreach (var header in map.Unused.Where(h => HeaderName.Of(h).Unit.Length > 0))
        {
            _problems.Add(new ScheduleProblem(map.Header.Line, header,
                "it holds lengths, is taken for nothing, and there is no column for each of width and height: say in the list of columns which it is.",
                RowLost: false));
        }
    }

    /// <summary>Of windows that have changed places in the schedule nothing is taken: which opening a row is of, only somebody on site can say.</summary>
    private void KeepInPlace(ImmutableArray<string> missing)
    {
        if (ChangedPlaces.Of(_looks, [.. missing.Select(t => LookOf(_house.FindTag(t)!))]) is not { Count: > 0 } moved)
            return;
        var places = $"{string.Join(", ", moved)} {(moved.Count == 1 ? "has" : "have")} changed places in the schedule: "
            + "look whether tags were swapped or numbered again";
        for (var at = 0; at < _revised.Count; at++)
        {
            if (_revised[at] is not { KeptBecause: null } taken || !moved.Contains(taken.Tag))
                continue;
            _draft = _draft with { Edits = [.. _draft.Edits.Where(e => !taken.Edits.Any(t => ReferenceEquals(t, e)))] };
            _revised[at] = taken with { KeptBecause = places };
        }
        LeaveRoomsToTheirRows();
        _understood.Add($"{places}; nothing of {(moved.Count == 1 ? "it" : "them")} is taken");
    }

    /// <summary>A new room in which nothing comes any more comes with the rows that name it, where somebody takes one of them.</summary>
    private void LeaveRoomsToTheirRows()
    {
        var used = _draft.Edits.OfType<Edit.Put>().Select(p => p.Value).ToHashSet();
        foreach (var room in _newRooms.Where(r => !used.Contains(r.Id)))
        {
            ImmutableArray<Edit> added = [.. _draft.Edits.Where(e => e is Edit.Add add ? add.Item == room.Id : e is Edit.Put put && put.Item == room.Id)];
            _draft = _draft with { Edits = [.. _draft.Edits.Except(added)] };
            _newRoomNames.Remove(room.Name);
            for (var at = 0; at < _revised.Count; at++)
            {
                if (_revised[at].Edits.OfType<Edit.Put>().Any(p => p.Value == room.Id))
                    _revised[at] = _revised[at] with { Edits = [.. added, .. _revised[at].Edits] };
            }
        }
    }

    /// <summary>Says of a window that is new and one that is gone that they are alike: an office renames windows too.</summary>
    private void SayAlike(ImmutableArray<string> missing)
    {
        static (string, string, string) What(string? room, string width, string height) => (room?.ToLowerInvariant() ?? "", width, height);
        var gone = missing.Select(t => _house.FindTag(t)!)
            .ToLookup(w => What(w.Room?.Name, w.Show(WindowFacts.RoughWidth), w.Show(WindowFacts.RoughHeight)), w => w.Tag);
        foreach (var alike in _windows.Where(w => w is { Width.Length: > 0, Height.Length: > 0 }).GroupBy(w => What(w.Room, w.Width, w.Height)))
        {
            if (gone[alike.Key].ToList() is { Count: > 0 } tags)
                _understood.Add($"{string.Join(", ", alike.Select(w => w.Tag))} new and {string.Join(", ", tags)} gone, of one size in one room: "
                    + "look whether that is another tag of the same window");
        }
    }

    private void AddWindow(SheetRow row, string tag, bool quiet)
    {
        if (_lineOfTag.TryGetValue(tag, out var first))
        {
            Problem(row, ScheduleField.Tag, string.Create(CultureInfo.InvariantCulture,
                $"tag {tag} is on line {first} already. Every window has its own tag."), rowLost: true);
            return;
        }
        if (options.Revised && (_house.FindTag(tag) ?? RenamedHere(tag)) is { } revised)
        {
            _lineOfTag[tag] = _lineOfTag[revised.Tag] = row.Line;
            if (!SameName.Comparer.Equals(tag, revised.Tag))
                Keep(row, revised, WindowFacts.Tag.Label, revised.Tag, tag, Typed(revised.Item.Latest(WindowFacts.Tag)!));
            Revise(revised, row, quiet);
            return;
        }
        if (_house.FindTag(tag) is { } there)
        {
            Problem(row, ScheduleField.Tag, $"tag {there.Tag} is in the house already{(there.Room is { } of ? $", in {of.FullName}" : "")}.", rowLost: true);
            return;
        }
        if (WindowFacts.Tag.ReadTyped(tag, _house) is { Ok: false, Reason: { } reason })
        {
            Problem(row, ScheduleField.Tag, reason, rowLost: true);
            return;
        }
        _lineOfTag[tag] = row.Line;
        var (room, roomName) = Room(row);
        var size = Size(row, tag, quiet);
        var from = _draft.Edits.Length;
        _draft = _draft.WithWindow(tag, room, out var window, out var unit);
        Put(window, WindowFacts.RoughWidth, size.Width);
        Put(window, WindowFacts.RoughHeight, size.Height);
        Put(window, WindowFacts.Facing, Read(row, ScheduleField.Facing, WindowFacts.Facing, quiet: quiet));
        Put(window, WindowFacts.Reach, Read(row, ScheduleField.Reach, WindowFacts.Reach, quiet: quiet));
        Put(window, WindowFacts.Mount, Read(row, ScheduleField.Mount, WindowFacts.Mount, quiet: quiet));
        Put(window, WindowFacts.Note, Note(row, quiet));
        var ofUnit = UnitColumns.Select(c => (c.Fact, Stored: Read(row, c.Field, c.Fact, quiet: quiet))).ToList();
        foreach (var (fact, stored) in ofUnit)
            Put(unit, fact, stored);
        LeaveOut(row, window, quiet);
        _windows.Add(new PlannedWindow(row.Line, tag, roomName, Shown(WindowFacts.RoughWidth, size.Width), Shown(WindowFacts.RoughHeight, size.Height))
        {
            Edits = _draft.Edits[from..],
            Unit = string.Join(", ", ofUnit.Where(u => u.Stored is not null)
                .Select(u => $"{u.Fact.Label.ToLowerInvariant()} {u.Fact.ShowStored(u.Stored!, _house)}")),
        });
    }

    private void Revise(Window window, SheetRow row, bool quiet)
    {
        if (TakeRows.IsNoted(window))
            _understood.Add($"{window.Tag} is in the schedule, and {(window.LeftOut ? "is left out here as" : "its note says that it is")} gone from one");
        ReviseLeftOut(window, row);
        var size = Size(row, window.Tag, quiet);
        if (window.Units.Length == 1)
        {
            var here = LookOf(window);
            var lead = Read(row, ScheduleField.LeadSide, UnitFacts.LeadSide, quiet: true);
            var room = map.Cell(row, ScheduleField.Room) is { Length: > 0 } named ? named.ToLowerInvariant() : here.Room;
            _looks.Add((window.Tag, here, new WindowLook(room, size.Width ?? here.Width, size.Height ?? here.Height, lead ?? here.Lead)));
        }
        Revise(window, row, WindowFacts.RoughWidth, size.Width, ScheduleField.Width, ScheduleField.Size);
        Revise(window, row, WindowFacts.RoughHeight, size.Height, ScheduleField.Height, ScheduleField.Size);
        Revise(window, row, WindowFacts.Facing, Read(row, ScheduleField.Facing, WindowFacts.Facing, quiet: quiet), ScheduleField.Facing);
        Revise(window, row, WindowFacts.Reach, Read(row, ScheduleField.Reach, WindowFacts.Reach, quiet: quiet), ScheduleField.Reach);
        Revise(window, row, WindowFacts.Mount, Read(row, ScheduleField.Mount, WindowFacts.Mount, quiet: quiet), ScheduleField.Mount);
        Revise(window, row, WindowFacts.Note, Note(row, quiet));
        ReviseRoom(window, row);
        if (window.Units is [var unit])
        {
            foreach (var (field, fact) in UnitColumns)
                Revise(unit, row, fact, Read(row, field, fact, quiet: quiet), field);
        }
        else if (UnitColumns.Any(c => map.Cell(row, c.Field).Length > 0))
        {
            _understood.Add(string.Create(CultureInfo.InvariantCulture,
                $"{window.Tag} has {window.Units.Length} units here: what line {row.Line} says of its covering is compared with none of them"));
        }
    }

    private static WindowLook LookOf(Window window) => new(window.Room?.Name.ToLowerInvariant(), Stored(window, WindowFacts.RoughWidth),
        Stored(window, WindowFacts.RoughHeight), window.Units is [var unit, ..] ? Stored(unit, UnitFacts.LeadSide) : null);

    private static string? Stored(Subject of, Fact fact) => of.Item.Latest(fact)?.Stored;

    /// <summary>Leaving a window out, or having it after all, is for somebody here to say: it is listed, and nothing comes of it.</summary>
    private void ReviseLeftOut(Window window, SheetRow row)
    {
        var cell = map.Cell(row, ScheduleField.LeftOut);
        if (cell.Length > 0 && !cell.Equals(WindowTable.NotLeftOut, StringComparison.OrdinalIgnoreCase) != window.LeftOut)
            Keep(row, window, "Left out", window.LeftOut ? WindowTable.LeftOutUnsaid : WindowTable.NotLeftOut, cell, "that is for you to say here");
    }

    private void Keep(SheetRow row, Window window, string label, string here, string there, string because) =>
        _revised.Add(new RevisedValue(row.Line, window.Tag, label, here, there, because));

    /// <summary>The window that came by a tag and was renamed here, where no row has the tag that it has now.</summary>
    private Window? RenamedHere(string tag) => Tags.Renamed(tag) is { } window && !TagsOfFile.Contains(window.Tag) ? window : null;

    private ImportedTags Tags => _tags ??= new ImportedTags(_house, log.Changes.Where(c => ScheduleImport.IsOne(c) && log.IsInForce(c.Id)));

    private static string Typed(Head head) =>
        string.Create(CultureInfo.InvariantCulture, $"{head.By} {(head.Stored is null ? "emptied" : "typed")} it on {head.At:yyyy-MM-dd}");

    private void Revise(Subject of, SheetRow row, Fact fact, string? stored, params ScheduleField[] columns)
    {
        var head = of.Item.Latest(fact);
        if (stored is null && head?.Stored is { } had && columns.Any(map.Has) && columns.All(c => map.Cell(row, c).Length == 0) && IsImported(head))
        {
            _revised.Add(new RevisedValue(row.Line, of.Name, fact.Label, fact.ShowStored(had, _house), "nothing",
                "a blank in a schedule takes nothing away; empty it here where it is to be blank")
            {
                Edits = new Draft("").PutStored(of.Item.Id, fact.Name, null).Edits,
            });
        }
        if (stored is null || stored == head?.Stored)
            return;
        var kept = KeptBecause(of, fact, head);
        var edit = new Draft("").PutStored(of.Item.Id, fact.Name, stored).Edits;
        if (kept is null)
            _draft = _draft with { Edits = _draft.Edits.AddRange(edit) };
        _revised.Add(new RevisedValue(row.Line, of.Name, fact.Label, head?.Stored is { } here ? fact.ShowStored(here, _house) : "",
            fact.ShowStored(stored, _house), kept)
        { Edits = edit });
    }

    private void ReviseRoom(Window window, SheetRow row)
    {
        var named = map.Cell(row, ScheduleField.Room);
        var floor = map.Cell(row, ScheduleField.Floor);
        if (named.Length == 0 || (window.Room is { } there && SameName.Comparer.Equals(there.Name, named)
            && (floor.Length == 0 || there.Floor is null || SameName.Comparer.Equals(there.Floor, floor))))
            return;
        var here = window.Room is not { } of ? "" : of.Floor is { } level && floor.Length > 0 ? $"{of.Name}/{level}" : of.FullName;
        var kept = KeptBecause(window, WindowFacts.Room, window.Item.Latest(WindowFacts.Room)) ?? RoomRenamedHere(window.Room, named);
        var room = kept is null ? Room(row) : (Id: null, Name: named);
        if (room.Id is { } id)
            _draft = _draft.PutStored(window.Item.Id, WindowFacts.Room.Name, id);
        _revised.Add(new RevisedValue(row.Line, window.Tag, WindowFacts.Room.Label, here, floor.Length > 0 ? $"{named}/{floor}" : room.Name ?? named, kept)
        {
            Edits = room.Id is null ? [] : [_draft.Edits[^1]],
        });
    }

    /// <summary>Why a window stays in its room although the schedule has another name: the room had that name until somebody renamed it here.</summary>
    private string? RoomRenamedHere(Room? room, string named) => room?.Item.Latest(RoomFacts.Name) is { } head
        && log.Changes.SelectMany(c => c.Edits).OfType<Edit.Put>()
            .Any(p => p.Item == room.Id && p.Field == RoomFacts.Name.Name && SameName.Comparer.Equals(p.Value, named))
        ? string.Create(CultureInfo.InvariantCulture, $"{head.By} renamed that room on {head.At:yyyy-MM-dd}") : null;

    private bool IsImported(Head head) => (_imports ??= log.Changes.Where(ScheduleImport.IsOne).Select(c => c.Id).ToHashSet()).Contains(head.Id);

    /// <summary>Why what the house has stays: somebody typed it here, or the opening was measured, or the maker has it; no office knows it better.</summary>
    private string? KeptBecause(Subject of, Fact fact, Head? head)
    {
        return WhyOther(of) is { } other ? other
            : head is null ? null
            : !IsImported(head) ? Typed(head)
            : IsMeasured(of) && (fact == WindowFacts.RoughWidth || fact == WindowFacts.RoughHeight) ? "the finished opening was measured"
            : StandsBy.Why(of, fact);
    }

    /// <summary>Why a row may be that of another window: this one came by another tag, and the schedule has both, as where two are swapped.</summary>
    private string? WhyOther(Subject of) => (of as Window ?? (of as Unit)?.Window) is { } window && Tags.Before(window) is { } before
        && TagsOfFile.Contains(before) && TagsOfFile.Contains(window.Tag) && window.Item.Latest(WindowFacts.Tag) is { } head
        ? string.Create(CultureInfo.InvariantCulture, $"it was {before} until {head.By} typed {window.Tag} on {head.At:yyyy-MM-dd}, and the schedule has both")
        : null;

    /// <summary>One measure is enough: it is of the opening as it is, and what is drawn of that came before it.</summary>
    private static bool IsMeasured(Subject of) => of is Window { Widths: var (top, middle, bottom), Heights: var (left, centre, right) }
        && (top ?? middle ?? bottom ?? left ?? centre ?? right) is not null;

    private (string? Id, string? Name) Room(SheetRow row)
    {
        var floor = Read(row, ScheduleField.Floor, RoomFacts.Floor);
        var name = map.Cell(row, ScheduleField.Room) is { Length: > 0 } ? Read(row, ScheduleField.Room, RoomFacts.Name) : options.Room ?? floor;
        if (name is null)
            return (null, null);
        var named = _house.Rooms.Select(RoomChoice.Of).Concat(_newRooms).Where(r => SameName.Comparer.Equals(r.Name, name)).ToList();
        var fit = named.Where(r => floor is null || r.Floor is null || SameName.Comparer.Equals(r.Floor, floor)).ToList();
        if (fit.Count > 1 && floor is null)
        {
            Problem(row, ScheduleField.Room, $"there is more than one {name}, and no floor says which: {string.Join(", ", fit)}. It is left without a room.",
                rowLost: false);
            return (null, null);
        }
        if (fit.Count > 0)
            return fit.OrderBy(r => r.Floor is null).Select(r => (r.Id, r.Name)).First();
        _draft = _draft.New(ItemKind.Room, House.RootId, out var id)
            .PutStored(id, RoomFacts.Name.Name, name)
            .Put(id, RoomFacts.WalkingOrder, _house.Rooms.Select(r => r.WalkingOrder ?? 0).DefaultIfEmpty().Max() + _newRooms.Count + 1)
            .PutIf(id, RoomFacts.Floor, floor);
        _newRooms.Add(new RoomChoice(id, name, floor));
        _newRoomNames.Add(name);
        return (id, name);
    }

    private (string? Width, string? Height) Size(SheetRow row, string tag, bool quiet)
    {
        var width = Length(row, ScheduleField.Width, WindowFacts.RoughWidth, map.Cell(row, ScheduleField.Width), quiet);
        var height = Length(row, ScheduleField.Height, WindowFacts.RoughHeight, map.Cell(row, ScheduleField.Height), quiet);
        if (map.Cell(row, ScheduleField.Size) is not { Length: > 0 } cell || (width is not null && height is not null))
            return (width, height);
        var read = SheetError.Of(cell) is { } error ? new Refusal(error) : SizeText.Read(cell);
        if (!read.Ok)
        {
            if (!quiet)
                Problem(row, ScheduleField.Size, read.Reason!, rowLost: false);
            return (width, height);
        }
        if (!quiet)
            _understood.Add($"{tag}: {read.Value.Understood}");
        return (width ?? Length(row, ScheduleField.Size, WindowFacts.RoughWidth, read.Value.Width, quiet),
            height ?? Length(row, ScheduleField.Size, WindowFacts.RoughHeight, read.Value.Height, quiet));
    }

    private string? Length(SheetRow row, ScheduleField field, Fact fact, string cell, bool quiet)
    {
        if (!SizePatterns.EitherComma().IsMatch(cell))
            return cell.Length == 0 ? null : ReadText(row, field, fact, WithUnit(WithPoint(cell, quiet), field), quiet, rowLost: false);
        if (!quiet)
        {
            Problem(row, field, $"\"{cell}\" can be {cell.Replace(",", "", StringComparison.Ordinal)} or {cell.Replace(',', '.')}: write it without the comma.",
                rowLost: false);
        }
        return null;
    }

    /// <summary>A decimal comma as a point; with three digits behind it a comma may be a thousands mark, and stays to be asked about.</summary>
    private string WithPoint(string cell, bool quiet)
    {
        if (!SizePatterns.DecimalComma().IsMatch(cell))
            return cell;
        var pointed = cell.Replace(',', '.');
        if (!quiet)
            _understood.Add($"{cell} read as {pointed}");
        return pointed;
    }

    private string WithUnit(string cell, ScheduleField field)
    {
        var unit = map.UnitOf(field) is { Length: > 0 } named ? named : options.BareUnit ?? "";
        return unit.Length > 0 && SizePatterns.Bare().IsMatch(cell) ? $"{cell} {unit}" : cell;
    }

    private string? Note(SheetRow row, bool quiet)
    {
        var sill = map.Cell(row, ScheduleField.Sill) is { Length: > 0 } height ? $"Sill {WithUnit(height, ScheduleField.Sill)}" : null;
        var note = map.Cell(row, ScheduleField.Note) is { Length: > 0 } remark ? remark : null;
        return (sill, note) is (null, null) ? null : ReadText(row, ScheduleField.Note, WindowFacts.Note,
            string.Join(". ", new[] { note, sill }.OfType<string>()), quiet, rowLost: false);
    }

    private void LeaveOut(SheetRow row, string window, bool quiet)
    {
        var cell = map.Cell(row, ScheduleField.LeftOut);
        if (cell.Length == 0 || cell.Equals(WindowTable.NotLeftOut, StringComparison.OrdinalIgnoreCase))
            return;
        _draft = _draft.Put(window, WindowFacts.Covered, YesNo.No);
        if (!cell.Equals(WindowTable.LeftOutUnsaid, StringComparison.OrdinalIgnoreCase))
            Put(window, WindowFacts.NotCoveredBecause, ReadText(row, ScheduleField.LeftOut, WindowFacts.NotCoveredBecause, cell, quiet, rowLost: false));
    }

    private int Count(SheetRow row)
    {
        var cell = map.Cell(row, ScheduleField.Quantity);
        if (cell.Length == 0)
            return 1;
        if (decimal.TryParse(cell.Replace(',', '.'), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var count)
            && count is > 0 and <= 99 && count == Math.Truncate(count))
            return (int)count;
        _problems.Add(new ScheduleProblem(row.Line, map.HeaderOf(ScheduleField.Quantity), $"\"{cell}\" is no number of windows from 1 to 99.", RowLost: false)
        {
            OneTaken = true,
        });
        return 1;
    }

    private string? Read(SheetRow row, ScheduleField field, Fact fact, bool rowLost = false, bool quiet = false)
    {
        var cell = map.Cell(row, field);
        if (cell.Length == 0 && rowLost)
            Problem(row, field, "there is no tag.", rowLost);
        return cell.Length == 0 ? null : ReadText(row, field, fact, cell, quiet, rowLost);
    }

    private string? ReadText(SheetRow row, ScheduleField field, Fact fact, string text, bool quiet, bool rowLost)
    {
        var read = SheetError.Of(text) is { } error ? new Refusal(error) : fact.ReadTyped(ChoiceWords.InOurs(fact, text), _house);
        if (read.Ok && Chosen.Contains(fact) && fact.ShowStored(read.Value, _house) is var shown && !SameName.Comparer.Equals(shown, text))
        {
            if (fact == UnitFacts.Kind && text.Length < LettersOfKind)
                read = new Refusal($"\"{text}\" is too short to tell a kind by: write its name, such as {shown}.");
            else if (_readAs.Add((field, text)))
                _understood.Add($"{fact.Label} \"{text}\" read as {shown}");
        }
        if (read.Ok)
            return read.Value;
        if (!quiet)
            Problem(row, field, read.Reason!, rowLost);
        return null;
    }

    private void Put(string item, Fact fact, string? stored)
    {
        if (stored is not null)
            _draft = _draft.PutStored(item, fact.Name, stored);
    }

    private string Shown(Fact<Core.Units.Length> fact, string? stored) =>
        stored is null ? "" : fact.Show(Core.Units.LengthText.Read(stored, Core.Units.DisplayUnits.Millimetres).Value, _house);

    private void Problem(SheetRow row, ScheduleField field, string reason, bool rowLost) =>
        _problems.Add(new ScheduleProblem(row.Line, map.HeaderOf(field), reason, rowLost));

    [GeneratedRegex(@"^(\d{4}-\d{2}-\d{2}|\d{1,2}[-/. ][A-Z][a-z]{2}|[A-Z][a-z]{2}[-/. ]\d{2}|\d{1,2}[/.]\d{1,2}[/.]\d{4})$")]
    private static partial Regex DateTag();

    /// <summary>What a row is that is no window; null where it is one.</summary>
    private string? NoWindow(SheetRow row) => map.IsHeader(row) ? "the header again"
        : map.IsOurs ? null
        : IsTotals(row) ? "a row of totals"
        : row.Cells.Count(c => c.Length > 0) != 1 || _house.FindTag(map.Cell(row, ScheduleField.Tag)) is not null ? null
        : map.Cell(row, ScheduleField.Tag) is var words && words.Split(' ', StringSplitOptions.RemoveEmptyEntries).Length >= WordsOfNote ? "a note"
        : words.Length >= LettersOfHeading && !words.Any(char.IsDigit) ? $"a heading, \"{words}\""
        : null;

    private bool IsTotals(SheetRow row) => IsTotal(map.Cell(row, ScheduleField.Tag)) ||
        row.Cells.FirstOrDefault(c => c.Length > 0) is { } first && TotalWords.Contains(first.TrimEnd(':').ToLowerInvariant().Split(':')[0].Trim());

    /// <summary>Whether what stands for a tag begins with a word for a total, such as "Total glass": no window is called that.</summary>
    private static bool IsTotal(string tag) =>
        TotalWords.Any(w => tag.StartsWith(w, StringComparison.OrdinalIgnoreCase) && (tag.Length == w.Length || tag[w.Length] is ' ' or ':' or '='));
}
