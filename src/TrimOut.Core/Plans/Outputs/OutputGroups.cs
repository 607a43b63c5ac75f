using System.Collections.Immutable;

namespace TrimOut.Core.Plans.Outputs;

/// <summary>Runs that can stand for each other: same room, same company, same load, same panel now.</summary>
/// <param name="Runs">Their numbers in the order.</param>
/// <param name="Sets">What moves them: numbers of groups and presets; a set of its own for a run that moves alone.</param>
/// <param name="Load">What each adds.</param>
/// <param name="Home">The panel that they are on and may be moved from; -1 while they wait.</param>
internal sealed record AlikeRuns(int[] Runs, int[] Sets, int Load, int Home);

/// <summary>The runs of an order as a search sees them: by room and by likeness.</summary>
internal sealed class OutputGroups
{
    /// <summary>Groups an order's runs.</summary>
    public OutputGroups(OutputOrder order)
    {
        var panel = order.Panels.Select((p, i) => (p.Id, i)).ToDictionary(p => p.Id, p => p.i);
        var runs = order.Runs.Select((r, i) => (Run: r, At: i, Panel: r.Landed is { } at ? panel[at.Panel] : -1)).ToArray();
        var names = runs.SelectMany(r => Company(r.Run)).GroupBy(n => n).Where(g => g.Count() > 1).Select((g, i) => (g.Key, i))
            .ToDictionary(g => g.Key, g => g.i);
        SetCount = names.Count;
        int[] SetsOf(RunToLand run) => [.. Company(run).Distinct().Where(names.ContainsKey).Select(n => names[n]).Order()];

        Fixed = order.MayMove ? [] : [.. runs.Where(r => r.Panel >= 0).Select(r => (r.At, r.Panel, SetsOf(r.Run)))];
        var rooms = runs.GroupBy(r => r.Run.Room ?? $"\0{r.Run.Id}").ToArray();
        Rooms =
        [
            .. rooms.OrderByDescending(g => g.Count()).ThenBy(g => g.Min(r => r.At)).Select(room => new OutputRoom(
                [.. room.Where(r => order.MayMove || r.Panel < 0)
                    .GroupBy(r => (Sets: string.Join(',', SetsOf(r.Run)), r.Run.Load, r.Panel))
                    .OrderByDescending(g => g.Count()).ThenBy(g => g.Min(r => r.At))
                    .Select(g => new AlikeRuns([.. g.Select(r => r.At)], SetsOf(g.First().Run), g.Key.Load, g.Key.Panel))],
                [.. room.Where(r => !order.MayMove && r.Panel >= 0).Select(r => r.Panel).Distinct().Order()])),
        ];
    }

    /// <summary>How many groups and presets of more than one unit there are.</summary>
    public int SetCount { get; }

    /// <summary>Runs that stay where they are: number, panel, sets.</summary>
    public (int Run, int Panel, int[] Sets)[] Fixed { get; }

    /// <summary>The rooms, largest first; a run of no known room is a room of its own.</summary>
    public OutputRoom[] Rooms { get; }

    private static ImmutableArray<string> Company(RunToLand run) => run.MovesWith.IsDefault ? [] : run.MovesWith;
}

/// <summary>One room's runs.</summary>
/// <param name="Alike">Those that may be put anywhere, by likeness.</param>
/// <param name="On">Panels that other runs of the room stay on.</param>
internal sealed record OutputRoom(AlikeRuns[] Alike, int[] On);
