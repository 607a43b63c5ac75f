using System.Collections.Immutable;
using TrimOut.Core;
using TrimOut.Core.Checks;
using TrimOut.Core.History;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Plans.Visits;
using TrimOut.Screens.Frames;

namespace TrimOut.Screens.Shell;

/// <summary>The sheets that labels can be written for.</summary>
/// <param name="Chosen">The one that was chosen, as it is typed; null for plain paper, to be cut.</param>
/// <param name="Common">Those that are common, as they are typed.</param>
/// <param name="InWords">What is understood of one as it is typed, or why it is none.</param>
internal sealed record LabelSheets(string? Chosen, IReadOnlyList<string> Common, Func<string, Result<string>> InWords)
{
    /// <summary>What plain paper is called.</summary>
    public const string Plain = "plain";
}

/// <summary>What screens see: the house as it stands, what the checks say of it, and where it is kept. Never changes.</summary>
internal sealed class ScreenContext
{
    private readonly bool _follows;
    private readonly Lazy<CheckReport> _report;
    private readonly Lazy<Progress[]> _sums;
    private readonly Lazy<ImmutableArray<OpenPhase>> _openPhases;
    private readonly Lazy<ILookup<string, TwoAtOnce>> _atOnce;
    private readonly Lazy<HouseHead> _head;
    private readonly Lazy<int> _stops;
    private readonly Lazy<Dictionary<string, (int Count, Change First)>> _since;

    // What was judged before is kept, and only what changed since is judged anew: a tick of the clock judges nothing.
    public ScreenContext(Scribe? scribe, IReadOnlyList<PaperChoice> papers, DateTimeOffset now, Glyphs glyphs, CheckReport? before = null)
    {
        Log = scribe?.Log ?? HouseLog.Empty;
        House = Log.House;
        Steps = scribe?.Steps ?? StepList.Shipped;
        Where = scribe?.Store.Where ?? "";
        ReadOnlyBecause = scribe?.Store.ReadOnlyBecause;
        LastSaved = scribe?.LastSaved;
        By = scribe?.By ?? "";
        UndoNext = scribe?.UndoNext;
        RedoNext = scribe?.RedoNext;
        Papers = papers;
        Now = now;
        Glyphs = glyphs;
        _follows = before is not null;
        _report = new(() => before is null ? CheckReport.Of(House, Steps) : ReferenceEquals(before.House, House) ? before : before.After(House));
        _sums = Sums(House, Steps);
        _openPhases = new(() => VisitPlan.Open(House, Steps));
        _atOnce = new(() => TwoAtOnce.ByVisit(House));
        (_head, _stops) = (new(() => HouseHead.Of(House, Steps, Today)), new(() => Report.OpenStops.Count()));
        _since = new(() => Unwritten(papers, Log));
    }

    private ScreenContext(ScreenContext of, House house, CheckReport report)
    {
        (Log, House, Where, ReadOnlyBecause, LastSaved) = (of.Log, house, of.Where, of.ReadOnlyBecause, of.LastSaved);
        AsksOffice = of.AsksOffice;
        (By, UndoNext, RedoNext, Papers, Now, Glyphs, Steps) = (of.By, of.UndoNext, of.RedoNext, of.Papers, of.Now, of.Glyphs, of.Steps);
        (_follows, _report) = (true, new(report));
        _sums = Sums(house, Steps);
        _openPhases = new(() => VisitPlan.Open(house, Steps));
        _atOnce = new(() => TwoAtOnce.ByVisit(house));
        (_head, _stops) = (new(() => HouseHead.Of(House, Steps, Today)), new(() => Report.OpenStops.Count()));
        _since = of._since;
    }

    public House House { get; }

    /// <summary>What is saved, where this shows a house as what is being typed would leave it; null for a house that stands as it is shown.</summary>
    public ScreenContext? Saved { get; private init; }

    public HouseLog Log { get; }

    public CheckReport Report => _report.Value;

    /// <summary>Whether what <see cref="GetReady"/> works out is there, or follows at once from what was there before.</summary>
    public bool IsChecked => _follows || (_report.IsValueCreated && _sums.IsValueCreated && _head.IsValueCreated && _stops.IsValueCreated);

    /// <summary>The tone of what is well: nothing is green while checks wait or a stop is open.</summary>
    public Tone Good => Report.Waiting.None && Stops == 0 ? Tone.Good : Tone.Text;

    /// <summary>How many stops are open in the whole house.</summary>
    public int Stops => _stops.Value;

    /// <summary>Where the house stands today.</summary>
    public HouseHead Head => _head.Value;

    /// <summary>The list of steps that the work is done by.</summary>
    public StepList Steps { get; }

    /// <summary>How many changes a paper does not have, and the first of them; null for one that has all, and for one that was not written.</summary>
    public (int Count, Change First)? SinceWritten(PaperChoice paper) => _since.Value.TryGetValue(paper.Id, out var since) ? since : null;

    /// <summary>Phases in which something is still to be done, each with who is not through it.</summary>
    public ImmutableArray<OpenPhase> OpenPhases => _openPhases.Value;

    /// <summary>Who is expected at two visits at the same time, by the id of each of the two.</summary>
    public ILookup<string, TwoAtOnce> AtOnce => _atOnce.Value;

    /// <summary>How far the whole house is in each phase.</summary>
    public Progress SumOf(Phase phase) => _sums.Value[(int)phase];

    /// <summary>Works out what the screens will ask for, so that another thread can do it before they ask.</summary>
    public void GetReady() => _ = (_report.Value, _sums.Value, _head.Value, _stops.Value);

    /// <summary>The same beside the keys.</summary>
    /// <remarks>
    /// On a thread of its own: the pool begins with one for each processor, and on a laptop with two the library, which waits for one of the pool before it
    /// shows anything, would wait for the checks.
    /// </remarks>
    public Task GetReadyBeside() => Task.Factory.StartNew(GetReady, CancellationToken.None, TaskCreationOptions.LongRunning, TaskScheduler.Default);

    public string Where { get; }

    public string? ReadOnlyBecause { get; }

    public DateTimeOffset? LastSaved { get; }

    public string By { get; }

    public Change? UndoNext { get; }

    public Change? RedoNext { get; }

    public IReadOnlyList<PaperChoice> Papers { get; }

    /// <summary>The sheets that labels can be written for.</summary>
    public LabelSheets Labels { get; init; } = new(null, [], _ => new Refusal("There are no labels here."));

    /// <summary>Where the house stands with the office; null where this laptop is enrolled at none.</summary>
    public OfficeStanding? Office => Log.Changes.IsEmpty ? null : AsksOffice(Log);

    /// <summary>Who knows where a house stands with the office. It changes while the house does not.</summary>
    public Func<HouseLog, OfficeStanding?> AsksOffice { private get; init; } = _ => null;

    public DateOnly Today => DateOnly.FromDateTime(Now.DateTime);

    public DateTimeOffset Now { get; }

    public Glyphs Glyphs { get; }

    /// <summary>The same with the house as a draft would leave it, for showing what is being typed.</summary>
    public ScreenContext With(Draft draft)
    {
        var house = HouseLog.Preview(House, draft, Now);
        return new ScreenContext(this, house, Report.After(house)) { Saved = Saved ?? this };
    }

    /// <summary>
    /// The same with the house as it stood when it had its first so many changes. All is worked out here, which takes as long as opening the house.
    /// </summary>
    public ScreenContext AsItStood(int count)
    {
        var house = Log.At(count);
        var then = new ScreenContext(this, house, CheckReport.Of(house, Steps));
        then.GetReady();
        return then;
    }

    private static Dictionary<string, (int Count, Change First)> Unwritten(IReadOnlyList<PaperChoice> papers, HouseLog log)
    {
        var since = new Dictionary<string, (int, Change)>();
        // Papers that were written together have one extent.
        foreach (var same in papers.Where(p => p.Written is not null).GroupBy(p => p.Written!.Extent))
        {
            if (log.Since(same.Key).ToList() is not [var first, ..] changes)
                continue;
            foreach (var paper in same)
                since[paper.Id] = (changes.Count, first);
        }
        return since;
    }

    private static Lazy<Progress[]> Sums(House house, StepList steps) => new(() => [.. PhaseNames.All.Select(p => Progress.Of(house, p, steps))]);
}
