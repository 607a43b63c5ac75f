using System.Collections.Concurrent;
using System.Collections.Immutable;
using TrimOut.Core.Checks.Evidence;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Kits;
using TrimOut.Core.Phases;
using TrimOut.Core.Reads;

namespace TrimOut.Core.Checks;

/// <summary>What all checks say of a house.</summary>
public sealed class CheckReport
{
    private readonly ImmutableArray<CheckSheet> _sheets;
    private readonly ReadIndex _index;
    private readonly WaiverMemory _waived;
    private readonly ImmutableArray<SheetFindings> _bySheet;
    private readonly Lazy<ImmutableArray<NotCheckedYet>> _missing;
    private readonly Lazy<ILookup<string, Finding>> _byUnit;
    private readonly Lazy<ILookup<string, NotCheckedYet>> _missingByUnit;
    private readonly Lazy<ImmutableArray<PassedUnread>> _unread;
    private readonly Lazy<ILookup<string, PassedUnread>> _unreadByUnit;
    private readonly Lazy<ILookup<string, PassedUnread>> _unreadByPart;
    private readonly Lazy<WaitingSums> _waiting;
    private readonly ConcurrentDictionary<Finding, IReadOnlyList<Fact>> _unchecked = new(ReferenceEqualityComparer.Instance);

    private CheckReport(House house, ImmutableArray<CheckSheet> sheets, ReadIndex index, WaiverMemory waived, CheckReport? before = null)
    {
        House = house;
        _sheets = sheets;
        (_index, _waived) = (index, waived);
        var waivers = house.Waivers.ToLookup(w => (w.About, w.Check));
        HashSet<int> others = before is null ? [] : [.. house.State.Items.OtherThanIn(before.House.State.Items).Select(o => o.After.Place)];
        _bySheet = [.. sheets.Select((sheet, at) => before?._bySheet[at] is var were && were?.AreStill(sheet, house, others) == true ? were
            : new SheetFindings(sheet, house, waivers, waived))];
        Findings = SheetFindings.InOrder(_bySheet);
        waived.Settle();
        _missing = new(() => [.. sheets.SelectMany(s => s.Missing)
            .Select(r => new NotCheckedYet(r.Check, house.State.Items[r.Subject.Place], (Outcome.NotChecked)r.Outcome))]);
        _byUnit = new(() => Findings.ToLookup(f => OwnerOf(f.Subject)));
        _missingByUnit = new(() => Missing.ToLookup(m => OwnerOf(m.Subject)));
        _unread = new(() => [.. sheets.SelectMany(UnreadOn)]);
        _unreadByUnit = new(() => Unread.ToLookup(u => OwnerOf(u.Subject)));
        _unreadByPart = new(() => Unread.SelectMany(u => u.Values.Select(v => v.Item).Distinct(), (u, part) => (u, part)).ToLookup(x => x.part, x => x.u));
        _waiting = new(Sums);
    }

    /// <summary>The house that was checked.</summary>
    public House House { get; }

    /// <summary>Broken rules: stops first, then cautions and notes; within these by phase and in walking order.</summary>
    public ImmutableArray<Finding> Findings { get; }

    /// <summary>What could not be checked yet.</summary>
    public ImmutableArray<NotCheckedYet> Missing => _missing.Value;

    /// <summary>
    /// What finds nothing wrong only by values of makers' sheets that nobody checked: no pass yet. What judges a part itself is not among it, for it is
    /// about those very values; that two of one sheet agree is, where one of them was changed since somebody checked it.
    /// </summary>
    public ImmutableArray<PassedUnread> Unread => _unread.Value;

    /// <summary>How many waivers of earlier releases were held against what is said, in making this report.</summary>
    internal int WaiversWorkedOut => _waived.WorkedOut;

    /// <summary>How many checks wait, and for how many facts: those that lack a detail, and those that pass by a value that nobody checked.</summary>
    public Waiting Waiting => _waiting.Value.All;

    /// <summary>How many checks wait for the sheet of a part, and for how many of its values, blank or never checked.</summary>
    public Waiting WaitingForSheets => _waiting.Value.ForSheets;

    /// <summary>How many parts these values are of.</summary>
    public int PartsWaitedFor => _waiting.Value.Parts;

    /// <summary>How many checks of a phase wait for anything but the sheet of a part.</summary>
    public int WaitingIn(Phase phase) => _waiting.Value.OthersIn[(int)phase];

    /// <summary>How many checks of a phase and of those before it wait, for whatever it is.</summary>
    public int WaitingUpTo(Phase phase) => _waiting.Value.AllIn.Take((int)phase + 1).Sum();

    /// <summary>How many rules hold, without those that do only by values that nobody checked.</summary>
    public int Passed => _sheets.Sum(s => s.Passed) - Unread.Sum(u => u.Passed);

    /// <summary>Stops that are neither mended nor waived.</summary>
    public IEnumerable<Finding> OpenStops => Findings.Where(f => f is { Open: true, Check.Severity: Severity.Stop });

    /// <summary>Holds every check against a house.</summary>
    public static CheckReport Of(House house) => Of(house, AllChecks.All);

    /// <summary>Holds every check against a house, with the list of steps that the work is done by.</summary>
    public static CheckReport Of(House house, StepList steps) => Of(house, AllChecks.By(steps));

    /// <summary>Holds only these checks against a house.</summary>
    public static CheckReport Of(House house, IEnumerable<ICheck> checks) => Of(house, checks, null);

    /// <summary>The same, noting no reads of a sort: for tests that show that each sort is needed.</summary>
    internal static CheckReport Of(House house, IEnumerable<ICheck> checks, Func<ReadKey, bool>? forgets)
    {
        var sheets = CheckSheet.Of(checks, house.State, forgets);
        return new CheckReport(house, sheets, new ReadIndex(SetsOf(sheets)), new WaiverMemory());
    }

    /// <summary>
    /// Holds the same checks against another state of the house. Only what read something that is another now is judged again; the result is the same
    /// as from the beginning.
    /// </summary>
    public CheckReport After(House house)
    {
        if (ReferenceEquals(house.State.Items, House.State.Items))
            return this;
        if (house.State.OtherThanIn(House.State) is not { } changed)
            return Of(house, _sheets.Select(s => s.Check));
        var touched = _index.TouchedBy(changed);
        ImmutableArray<CheckSheet> sheets = [.. _sheets.Select((s, at) => s.After(house.State, changed, touched[at]))];
        return new CheckReport(house, sheets, _index.After(SetsOf(sheets), touched), new WaiverMemory(_waived, changed), this);
    }

    /// <summary>Findings about a unit: its own, its home run's and its window's. What is wrong with its kind is told once, of the kind.</summary>
    public IEnumerable<Finding> About(Unit unit) => _byUnit.Value[unit.Id].Concat(_byUnit.Value[unit.Window.Id]);

    /// <summary>
    /// Open stops of the parts that a unit consists of, that feed it and that move it. Each is told and counted once, of its part; whoever works on the unit
    /// has to hear of it all the same.
    /// </summary>
    public IEnumerable<Finding> StopsOfParts(Unit unit) =>
        unit.Parts.SelectMany(p => _byUnit.Value[p.Id]).Where(f => f is { Open: true, Check.Severity: Severity.Stop });

    /// <summary>Findings about whatever walks through phases: a unit, a panel, the house itself.</summary>
    public IEnumerable<Finding> About(Subject subject) => subject is Unit unit ? About(unit) : About(subject.Item);

    /// <summary>What could not be checked yet of a unit, its home run and its window.</summary>
    public IEnumerable<NotCheckedYet> MissingAbout(Unit unit) => _missingByUnit.Value[unit.Id].Concat(_missingByUnit.Value[unit.Window.Id]);

    /// <summary>What passes of a unit, its home run and its window by values that nobody checked.</summary>
    public IEnumerable<PassedUnread> UnreadAbout(Unit unit) => _unreadByUnit.Value[unit.Id].Concat(_unreadByUnit.Value[unit.Window.Id]);

    /// <summary>What passes by values of a part that nobody checked.</summary>
    public IEnumerable<PassedUnread> UnreadOf(Item part) => _unreadByPart.Value[part.Id];

    /// <summary>What could not be checked yet because a part has blanks.</summary>
    public IEnumerable<NotCheckedYet> MissingOf(Item part) => Missing.Where(m => m.NotChecked.FillIn?.Item == part.Id);

    /// <summary>Findings about one item itself.</summary>
    public IEnumerable<Finding> About(Item item) => Findings.Where(f => f.Subject.Id == item.Id);

    /// <summary>How the figures of a finding were worked out; null where none are involved. It is judged again for whoever asks.</summary>
    public Working? WorkingOf(Finding finding) => JudgedAgain(finding)?.Working;

    /// <summary>The values of makers' sheets, as facts, that a finding was judged by and that nobody checked against their sheets.</summary>
    public IReadOnlyList<Fact> UncheckedBehind(Finding finding) =>
        // That rule tells of such values and of nothing else: a mark would say it twice.
        House.State.UncheckedValues.Count == 0 || finding.Check.Id == KitUnchecked.Id ? []
        : _unchecked.GetOrAdd(finding, f => [.. UncheckedValues
            .In(House, [.. _sheets.First(s => s.Check.Info.Id == f.Check.Id).ReadsBehind(f.Subject)])
            .Where(fact => f.Found.IsBy(FieldRef.To(f.Subject, fact)))]);

    /// <summary>What a finding says to whoever reads the house as it is shown, marked where it was judged by a value that nobody checked.</summary>
    public string Said(Finding finding) => UncheckedValues.Marked(finding.Found.Message.In(House), UncheckedBehind(finding).Count > 0);

    private Outcome.Found? JudgedAgain(Finding finding)
    {
        var view = new House(House.State);
        var check = _sheets.Select(s => s.Check).First(c => c.Info.Id == finding.Check.Id);
        // A run is judged under the id of its unit.
        var results = check is SubjectCheck by
            ? by.SubjectIds(view).Where(id => id == finding.Subject.Id || id == finding.Subject.Under).SelectMany(id => by.RunOn(by.Find(view, id)))
            : check.Run(view);
        return results.Where(r => r.Subject.Id == finding.Subject.Id).Select(r => r.Outcome).OfType<Outcome.Found>()
            .FirstOrDefault(f => f.Message.Equals(finding.Found.Message));
    }

    /// <summary>Open stops of one phase.</summary>
    public int StopsIn(Phase phase) => OpenStops.Count(f => f.Check.Phase == phase);

    private WaitingSums Sums()
    {
        var bySheet = Missing.ToLookup(WaitsForSheet);
        var others = new int[PhaseNames.All.Count];
        foreach (var missing in bySheet[false])
            others[(int)missing.Check.Phase]++;
        var all = new int[PhaseNames.All.Count];
        foreach (var phase in Missing.Select(m => m.Check.Phase).Concat(Unread.Select(u => u.Check.Phase)))
            all[(int)phase]++;
        var parts = bySheet[true].Select(m => m.NotChecked.FillIn!.Item).Concat(Unread.SelectMany(u => u.Values).Select(v => v.Item)).Distinct().Count();
        return new(Checks.Waiting.Of(Missing, Unread), Checks.Waiting.Of(bySheet[true], Unread), parts, [.. others], [.. all]);
    }

    private IEnumerable<PassedUnread> UnreadOn(CheckSheet sheet)
    {
        if (House.State.UncheckedValues is not { Count: > 0 } values || sheet.Check.Info.Id == KitUnchecked.Id)
            return [];
        // What is told of a part itself is told for all that say nothing because of it: it is found, and passes nowhere.
        var told = sheet.Found.Where(f => FactTable.IsKit(f.Subject.Kind))
            .Select(f => sheet.ReadsBehind(f.Subject).ToArray().ToHashSet()).ToList();
        return sheet.NothingFoundBy(values).Select(n => (Subject: House.State.Items.Find(n.Id)!, n.Passed, n.Reads))
            .Where(n => !FactTable.IsKit(n.Subject.Kind) || (n.Passed > 0 && sheet.Check is SheetContradictsItself
                && n.Reads.Any(r => SheetMark.IsChangedSince(n.Subject, new ReadKey(r).FactOf(n.Subject.Kind)!))))
            .Where(n => n.Passed > 0 || !told.Exists(t => n.Reads.All(t.Contains)))
            .Select(n => new PassedUnread(sheet.Check.Info, n.Subject, [.. n.Reads.Select(r => FieldOf(new ReadKey(r)))], n.Passed));
    }

    private FieldRef FieldOf(ReadKey read)
    {
        var part = House.State.Items[read.Place];
        return FieldRef.To(part, read.FactOf(part.Kind)!);
    }

    private sealed record WaitingSums(Waiting All, Waiting ForSheets, int Parts, ImmutableArray<int> OthersIn, ImmutableArray<int> AllIn);

    /// <summary>Whether a check waits for a value of a maker's sheet.</summary>
    public bool WaitsForSheet(NotCheckedYet missing) =>
        missing.NotChecked.FillIn is { } field && House.Find(field.Item) is { } item
        && SheetValues.Of(item.Kind).Any(f => f.Name == field.Field);

    private static ImmutableArray<IReadSets> SetsOf(ImmutableArray<CheckSheet> sheets) => ImmutableArray.CreateRange(sheets, s => s.Reads);

    private string OwnerOf(Item item) =>
        item.Kind is ItemKind.Run or ItemKind.Leg or ItemKind.Service && House.Find(item.Under) is { } above ? OwnerOf(above) : item.Id;
}
