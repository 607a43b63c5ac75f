using TrimOut.Core.Checks;
using TrimOut.Core.Checks.Panels;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using static TrimOut.Papers.Writing.Inline;
using static TrimOut.Papers.Writing.MarkdownWriter;

namespace TrimOut.Papers.Writing;

/// <summary>What a paper says at its head of what is still wrong, so that nobody drills, orders or signs by it unwarned.</summary>
internal static class OpenStops
{
    private static readonly Phase[] OfAPanel = [Phase.WalkThrough, Phase.RoughIn, Phase.CloseIn, Phase.Power];

    private static readonly Fact[] OnALabel = [RunFacts.LabelAtWindow, RunFacts.LabelAtPanel, RunFacts.Output];

    private static readonly Fact[] AtAnOutput = [.. OnALabel, RunFacts.WentDead];

    /// <summary>The open stops of the phases in which what feeds and loads a panel goes wrong, and the cautions about a panel.</summary>
    public static Action<MarkdownWriter, PaperData> OfPanels { get; } = (to, data) =>
    {
        SayStops(to, data, AtPanels(data));
        RestsOn.Say(to, data, OfAPanel);
    };

    /// <summary>On a paper to work by: the open stops of its phases.</summary>
    public static Action<MarkdownWriter, PaperData> Of(params Phase[] phases) => OfAnd(phases);

    /// <summary>On a paper to work by that prints facts of other phases too: their open stops and those that are mended at one of these facts.</summary>
    public static Action<MarkdownWriter, PaperData> OfAnd(Phase[] phases, params Fact[] facts) => (to, data) =>
    {
        SayStops(to, data, [.. data.Report.OpenStops.Where(f => phases.Contains(f.Check.Phase) || IsMendedAt(f, facts))]);
        RestsOn.Say(to, data, phases);
    };

    /// <summary>What is wrong with labels: what is mended on one, and that another window goes dead with the output that stands on it.</summary>
    private static IEnumerable<Finding> OfLabels(PaperData data) => data.Report.Findings.Where(f =>
        f is { Open: true, Check.Severity: not Severity.Note } && (IsMendedAt(f, OnALabel) || f.Check.Id == OutputFeedsAnother.Id));

    /// <summary>The ids of the runs whose labels are not to be stuck on.</summary>
    public static HashSet<string> WithWrongLabels(PaperData data) => [.. OfLabels(data).Select(f => f.Found.Mends.Item)];

    /// <summary>The fields at which a stop or a caution that is open is mended: what they say is in doubt.</summary>
    public static HashSet<FieldRef> FieldsInDoubt(PaperData data) =>
        [.. data.Report.Findings.Where(f => f is { Open: true, Check.Severity: not Severity.Note }).Select(f => f.Found.Mends)];

    /// <summary>What stands of a fact, and that it is in doubt where it is among such fields.</summary>
    public static Inline InDoubt(this Inline entry, Subject of, Fact fact, HashSet<FieldRef> doubted) =>
        doubted.Contains(FieldRef.To(of.Item, fact)) && of.Shown(fact) is not null ? Join(", ", [entry, Ours("in doubt")]) : entry;

    private static bool IsMendedAt(Finding finding, Fact[] facts) => facts.Any(x => x.Field() == finding.Found.Mends.Field);

    /// <summary>On the sheets of labels.</summary>
    public static Action<MarkdownWriter, PaperData> AtLabels { get; } = (to, data) => SayStops(to, data, [.. OfLabels(data)]);

    private static void SayStops(MarkdownWriter to, PaperData data, List<Finding> stops)
    {
        if (stops.Count == 0)
            return;
        to.Say(Strong("Stop first.") + (stops.Count == 1
            ? Ours("1 thing that this paper is about is wrong:")
            : Ours($"{stops.Count} things that this paper is about are wrong:")));
        to.Table(["Where", "What is wrong", "How to fix it"], stops.Select(f =>
            Row(NameOf(data.House, f.Subject), SheetMarks.Said(data, f), Said(f.Found.Mend, data.House))));
    }

    /// <summary>On a sheet of one page: that it is a draft, how many stops there are that have to do with a panel, where they stand, and its day.</summary>
    public static void DraftWithPanels(MarkdownWriter to, PaperData data) =>
        to.Say(Beside([.. DraftOf(data), .. PanelsFirst(data), Ours($"Written on {data.Date.OnPaper()}")]));

    /// <summary>The same, short, on each further sheet, which may hang alone on another door.</summary>
    public static void AgainOnAnotherDoor(MarkdownWriter to, PaperData data)
    {
        List<Inline> said = [.. IsDraft(data) ? [DraftMark] : Array.Empty<Inline>(), .. PanelsFirst(data)];
        if (said.Count > 0)
            to.Say(Beside(said));
    }

    private static IEnumerable<Inline> PanelsFirst(PaperData data) => AtPanels(data).Count switch
    {
        0 => [],
        1 => [Strong("Stop first.") + Ours("1 thing is wrong that whoever powers a panel is to know: it stands on the panel schedule.")],
        var stops => [Strong("Stop first.")
            + Ours($"{stops} things are wrong that whoever powers a panel is to know: they stand on the panel schedule.")],
    };

    private static List<Finding> AtPanels(PaperData data)
    {
        var live = data.House.Panels.SelectMany(p => p.NotWanted).Select(n => data.House.Find(n.Run.Under)?.Under).OfType<string>().ToHashSet();
        return [.. In(data, OfAPanel), .. data.Report.Findings.Where(f => f is { Open: true, Check.Severity: Severity.Caution }
            && (f is { Check.Phase: Phase.Power, Subject.Kind: ItemKind.Panel } || IsMendedAt(f, AtAnOutput)
                || (f.Check.Id == CableNotWanted.Id && live.Contains(f.Subject.Id))))];
    }

    /// <summary>The runs, by their ids, that the stops and cautions at the head of the panel schedule are about.</summary>
    public static HashSet<string> RunsAtPanels(PaperData data) =>
        [.. AtPanels(data).Where(f => f.Subject.Kind == ItemKind.Run || IsMendedAt(f, AtAnOutput))
            .Select(f => f.Subject.Kind == ItemKind.Run ? f.Subject.Id : f.Found.Mends.Item)];

    /// <summary>An output, or a tag, with the word that a stop is open about it.</summary>
    public static Inline Stopped(Inline what, bool isStopped) => isStopped ? Join(", ", [what, Ours("stop")]) : what;

    /// <summary>The units, by their ids, that an open stop of some phases is about.</summary>
    public static HashSet<string> UnitsStopped(PaperData data, IEnumerable<Unit> units, params Phase[] phases) =>
        [.. units.Where(u => data.Report.About(u).Any(f => f is { Open: true, Check.Severity: Severity.Stop } && phases.Contains(f.Check.Phase)))
            .Select(u => u.Id)];

    private static List<Finding> In(PaperData data, Phase[] phases) => data.Report.OpenStops.Where(f => phases.Contains(f.Check.Phase)).ToList();

    /// <summary>On the owner's book until it is signed for: that it is a draft, and how much is open.</summary>
    public static void Draft(MarkdownWriter to, PaperData data)
    {
        foreach (var draft in DraftOf(data))
            to.Say(draft);
    }

    /// <summary>Whether the house is not handed over yet.</summary>
    public static bool IsDraft(PaperData data) => new JobItself(data.House).Item.Get(HouseFacts.AcceptedOn) is null;

    /// <summary>What a paper says then.</summary>
    public static Inline DraftMark => Strong("DRAFT.") + Ours("The house is not handed over yet.");

    private static IEnumerable<Inline> DraftOf(PaperData data)
    {
        if (!IsDraft(data))
            yield break;
        var stops = data.Report.OpenStops.Count();
        var cautions = data.Report.Findings.Count(f => f is { Open: true, Check.Severity: Severity.Caution });
        var punch = data.House.PunchItems.Count(p => p.Open);
        var waiting = data.Report.Missing.Length;
        List<Inline> open =
        [
            stops == 1 ? Ours("1 stop") : Ours($"{stops} stops"), cautions == 1 ? Ours("1 caution") : Ours($"{cautions} cautions"),
            punch == 1 ? Ours("1 punch item") : Ours($"{punch} punch items"),
        ];
        if (waiting > 0)
            open.Add(waiting == 1 ? Ours("1 check that could not be made yet") : Ours($"{waiting} checks that could not be made yet"));
        yield return DraftMark + Ours($"Open: {Join(", ", [.. open])}.");
    }
}
