using System.Collections.Immutable;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;

namespace TrimOut.Core.Phases;

/// <summary>Which steps are done once more when something was replaced: common practice, no published source.</summary>
/// <remarks>
/// Only steps that were marked done, or whose readings were written without a mark, are asked again, and nothing else is. Their marks are cleared by
/// the change that records the service, and so stay in the history. Beside each stands for which service it is asked again, so that nobody takes it for
/// a step that was never done.
/// </remarks>
public static class AskedAgain
{
    private const string FieldName = "asked-again";

    private static readonly ImmutableArray<string> OfMotor =
    [
        "clicked-in", "moves-free", "spliced", "volts-read", "hub-paired", "remotes-paired", "moved-by-all", "open-limit", "close-limit",
        "level-with-neighbours", "preset-stored",
    ];

    private static readonly ImmutableArray<string> OfUnit = ["box-matched", "looked-over", "serial-noted", "cords-safe", .. OfMotor];

    private static readonly ImmutableArray<string> OfPanel = ["panel-hung", "mains-connected", "off-before-joints"];

    private static readonly ImmutableArray<string> OfOutput = ["landed", "volts-read", "output-proved"];

    /// <summary>What stays as it was, for the next one is to have it too: where the run lands, which hub, which name, which breaker.</summary>
    private static readonly ImmutableArray<Fact> Stays =
    [
        UnitFacts.Hub, UnitFacts.HubName, RunFacts.Panel, RunFacts.Output,
        PanelFacts.Type, PanelFacts.Location, PanelFacts.Board, PanelFacts.Breaker, PanelFacts.BreakerRating,
    ];

    /// <summary>The steps that are asked again, each with whose step it is, in the order of the work.</summary>
    /// <param name="house">The house.</param>
    /// <param name="about">What something was done to.</param>
    /// <param name="kind">What was done.</param>
    public static IEnumerable<(Subject Subject, Step Step)> By(House house, Item about, ServiceKind kind) =>
        from of in Wanted(house, about, kind)
        from step in StepList.All
        where step.Subject == of.Subject.Item.Kind && of.Steps.Contains(step.Id)
            && (of.Subject.MarkOf(step) is { } mark ? mark.NotNeededBecause is null : WasAsked(of.Subject, step) || IsRead(of.Subject, step))
        select (of.Subject, step);

    /// <summary>
    /// Whether an open step waits since an earlier service: it waits since this one, and nobody does it twice. Also where that record was removed since, for
    /// the mark that it took back did not come again.
    /// </summary>
    private static bool WasAsked(Subject subject, Step step) => subject.Item.Latest(Field(step))?.Stored is not null;

    /// <summary>Whether something was read of what is gone for a step that nobody marked: it is no evidence for what hangs there now.</summary>
    private static bool IsRead(Subject subject, Step step) => (subject is not Unit unit || step.Applies(unit))
        && ReadAgain(step).Any(f => Progress.Holder(subject, f)?.Latest(f.Name)?.Stored is not null);

    /// <summary>The evidence of a step that was of what is gone, and is read or seen once more.</summary>
    public static IEnumerable<Fact> ReadAgain(Step step) => step.Evidence.Where(f => !Stays.Contains(f));

    /// <summary>The service since which an open step waits, of several the last by its day; null for a step that is done, or that was open before.</summary>
    public static Service? Since(Subject subject, Step step)
    {
        if (subject.MarkOf(step) is not null || subject.Item.Latest(Field(step), out var several) is not { } asked)
            return null;
        return (several ? subject.Item.Heads(Field(step)) : [asked]).Select(h => h.Stored is { } id ? subject.House.Find(id) : null)
            .Where(i => i is { Removed: false }).Select(i => new Service(subject.House, i!)).MaxBy(s => s.On ?? DateOnly.MinValue);
    }

    /// <summary>
    /// Whether one laptop took a mark back because something was replaced, while another one, that did not know of it, marked the step: what was done to the
    /// unit before says nothing of the one that hangs there now. Until somebody settles which is so, the step is open.
    /// </summary>
    internal static bool IsTakenBack(Item item, Step step) => item.Heads(Field(step)) is var asked
        && item.Heads(step.Field).Any(h => h.Stored is null && asked.Any(a => a.Id == h.Id));

    /// <summary>The steps that wait since something was replaced, with whose step each is.</summary>
    public static IEnumerable<(Subject Subject, Step Step, Service Since)> Waiting(House house) => !house.ItemsOf(ItemKind.Service).Any() ? []
        : from subject in Progress.Walkers(house)
              // Few steps wait, and whether one does is seen more quickly than whether it applies.
          from step in StepList.All.Where(s => s.Subject == subject.Item.Kind)
          let since = Since(subject, step)
          where since is not null && (subject is not Unit unit || step.Applies(unit))
          select (subject, step, since);

    /// <summary>The field that says for which service a step is asked again.</summary>
    internal static string Field(Step step) => $"{FieldName}:{step.Id}";

    /// <summary>Whether a field says that, and is no fact.</summary>
    internal static bool IsNote(string field) => field.StartsWith(FieldName + ":", StringComparison.Ordinal);

    private static IEnumerable<(Subject Subject, ImmutableArray<string> Steps)> Wanted(House house, Item about, ServiceKind kind) => (about.Kind, kind) switch
    {
        (ItemKind.Unit, ServiceKind.Replaced) => house.FindUnit(about.Id) is { } unit ? [(unit, OfUnit)] : [],
        (ItemKind.Unit, ServiceKind.MotorReplaced) => house.FindUnit(about.Id) is { } unit ? [(unit, OfMotor)] : [],
        (ItemKind.Panel, ServiceKind.Replaced) => house.UnitsAt(Lookups.UnitsFedByPanel, about.Id).Select(u => ((Subject)u, OfOutput))
            .Prepend((house.FindPanel(about.Id)!, OfPanel)),
        (ItemKind.Hub, ServiceKind.Replaced) => house.Units.Select(u => ((Subject)u, OfHub(house, about, u))),
        (ItemKind.Remote, ServiceKind.Replaced) => house.FindRemote(about.Id)!.Units.Select(u => ((Subject)u, OfRemote(house, about, u))),
        _ => [],
    };

    /// <summary>
    /// What goes through a hub: a unit that is paired with it, remotes that count at it, and presets that it calls, by a timer of its own or by a key of such a
    /// remote.
    /// </summary>
    private static ImmutableArray<string> OfHub(House house, Item hub, Unit unit)
    {
        var (own, remotes) = (unit.Hub?.Id == hub.Id, unit.Remotes.Where(r => r.Item.Get(RemoteFacts.Hub)?.Id == hub.Id).Select(r => r.Id).ToHashSet());
        var stored = Presets(house, unit).Any(p => remotes.Contains(p.Under) || (own && p.Get(PresetFacts.RunsAt) is not null));
        return !own && remotes.Count == 0 ? []
            : [.. own ? ["hub-paired"] : Array.Empty<string>(), .. remotes.Count > 0 ? ["remotes-paired"] : Array.Empty<string>(), "moved-by-all",
                .. stored ? ["preset-stored"] : Array.Empty<string>()];
    }

    private static ImmutableArray<string> OfRemote(House house, Item remote, Unit unit) => Presets(house, unit).Any(p => p.Under == remote.Id)
        ? ["remotes-paired", "moved-by-all", "preset-stored"]
        : ["remotes-paired", "moved-by-all"];

    private static IEnumerable<Item> Presets(House house, Unit unit) => house.Look(Lookups.PresetsByUnit, unit.Id).Select(p => house.Find(p)).OfType<Item>();
}
