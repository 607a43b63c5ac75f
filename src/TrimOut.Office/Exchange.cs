using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using TrimOut.Core;
using TrimOut.Core.History;
using TrimOut.Core.Units;

namespace TrimOut.Office;

/// <summary>What came of an exchange with the office.</summary>
/// <param name="Merge">This house with what came; null where nothing came that it has not.</param>
/// <param name="Sent">How many changes the office had not had.</param>
/// <param name="Mark">How far the two know of each other now. To be kept before what came is taken in, or after.</param>
public sealed record Exchanged(Merge? Merge, int Sent, ExchangeMark Mark)
{
    /// <summary>How many changes stayed here because this device may only read the house at the office; 0 for one that may send.</summary>
    public int NotSent { get; init; }
}

/// <summary>Exchanges a house with the office: each gets what it lacks. Whatever is cut off in the middle is safe to be done again.</summary>
public static class Exchange
{
    /// <summary>How many changes are fetched at a time.</summary>
    public const int FetchedAtATime = 2000;

    private const int SentAtATime = 1000;
    private const int SentBytesAtATime = 4_000_000;
    private const int NamesToFindBy = 100;
    private const int MostChanges = 300_000;
    private const long MostCharacters = 128L << 20;

    /// <summary>Exchanges.</summary>
    /// <param name="office">The connection.</param>
    /// <param name="mine">The history of the house file; not empty. What is recorded meanwhile goes with the next exchange.</param>
    /// <param name="mark">How far the two knew of each other; null for the first time.</param>
    /// <param name="now">The device's clock.</param>
    /// <param name="sends">Whether what the office lacks is sent.</param>
    /// <param name="says">Told how far it is.</param>
    /// <param name="stop">Stops between two steps.</param>
    /// <returns>What came of it; nothing was changed here.</returns>
    /// <exception cref="OfficeException">It could not be done, or not to the end.</exception>
    public static async Task<Exchanged> Run(OfficeConnection office, HouseLog mine, ExchangeMark? mark, TimeProvider now, bool sends, Action<string> says,
        CancellationToken stop)
    {
        var (house, points, first) = await Known(office, mine, mark, sends, stop).ConfigureAwait(false);
        var from = points.FirstOrDefault(p => HeldChanges.Read(p.Held).Value.IsIn(mine));
        var atOffice = ExchangeMark.HeldBy(points);
        var reached = new Reached(from?.Arrival ?? 0, from?.Token ?? Guid.Empty, HeldChanges.Read(from?.Held ?? "").Value);
        var came = new List<Change>();
        reached = await FetchAll(office, house, reached, came, says, stop, first).ConfigureAwait(false);
        var (sent, others, kept) = (0, false, 0);
        if (sends)
        {
            atOffice = atOffice.With(reached.Held);
            foreach (var lines in Portions(mine.Changes.Where(c => !atOffice.Has(c.Id))))
            {
                stop.ThrowIfCancellationRequested();
                says($"{NumberText.Counted(sent, "change")} sent");
                if (await TrySend(office, house, [.. lines.Select(l => l.Line)], stop).ConfigureAwait(false) is not { } answer)
                {
                    kept = mine.Changes.Count(c => !atOffice.Has(c.Id)) - sent;
                    break;
                }
                sent += answer.Fresh;
                // Where another device sent something in between, it is fetched together with what was sent from here.
                others |= answer.Before != reached.Arrival || answer.Fresh != lines.Count;
                if (!others)
                    reached = new(answer.Last, answer.Token, reached.Held.With(HeldChanges.Of(lines.Select(l => l.Id))));
            }
            if (others)
                reached = await FetchAll(office, house, reached, came, says, stop).ConfigureAwait(false);
        }
        var both = Together(mine, came);
        if (sent > 0 && reached.Held.Count == both.Merged.Changes.Count)
            await KeepLists(office, house, reached.Arrival, both.Merged, stop).ConfigureAwait(false);
        var point = new OfficePoint(reached.Arrival, reached.Token, reached.Held.ToString());
        return new Exchanged(both.New.IsEmpty ? null : both, sent, new ExchangeMark(house, now.GetLocalNow(),
            reached.Arrival == 0 ? [] : both.New.IsEmpty || from is null ? [point] : [.. new[] { point, from }.DistinctBy(p => p.Arrival)]))
        {
            NotSent = kept,
        };
    }

    /// <summary>Sends changes; null where this device may read the house and not add to it, so that it still gets what it fetched.</summary>
    private static async Task<SentChanges?> TrySend(OfficeConnection office, int house, IReadOnlyCollection<string> lines, CancellationToken stop)
    {
        try
        {
            return await office.Send(house, lines, stop).ConfigureAwait(false);
        }
        catch (OfficeException failed) when (failed.IsOnlyReading)
        {
            if ((await office.Houses(stop).ConfigureAwait(false)).Any(h => h.House == house))
                return null;
            throw;
        }
    }

    /// <summary>Fetches a house that is not here yet.</summary>
    /// <param name="office">The connection.</param>
    /// <param name="house">Its number at the office.</param>
    /// <param name="now">The device's clock.</param>
    /// <param name="says">Told how far it is.</param>
    /// <param name="stop">Stops between two steps.</param>
    /// <returns>Its history, and how far the two know of each other with it.</returns>
    /// <exception cref="OfficeException">It could not be fetched, or it is no house's history.</exception>
    public static async Task<(HouseLog Log, ExchangeMark Mark)> First(OfficeConnection office, int house, TimeProvider now, Action<string> says,
        CancellationToken stop)
    {
        var came = new List<Change>();
        var reached = await FetchAll(office, house, new(0, Guid.Empty, HeldChanges.Of([])), came, says, stop).ConfigureAwait(false);
        if (came.Count == 0)
            throw new OfficeException(OfficeFault.BadData, "The office has no change of that house yet.");
        return (Together(HouseLog.Empty, came).Merged, new(house, now.GetLocalNow(), [new(reached.Arrival, reached.Token, reached.Held.ToString())]));
    }

    /// <summary>Works out the lists of each house that is behind.</summary>
    /// <param name="office">The connection.</param>
    /// <param name="says">Told the house's number and name.</param>
    /// <param name="stop">Stops between two houses.</param>
    /// <exception cref="OfficeException">It could not be done.</exception>
    public static async Task CatchUp(OfficeConnection office, Action<int, string> says, CancellationToken stop)
    {
        foreach (var house in await office.Behind(stop).ConfigureAwait(false))
        {
            var (log, mark) = await First(office, house, TimeProvider.System, _ => { }, stop).ConfigureAwait(false);
            await office.KeepLists(house, mark.Points[0].Arrival, HouseLists.Of(log.House), stop).ConfigureAwait(false);
            says(house, log.House.Name);
        }
    }

    /// <summary>What was sent is there: lists that could not be worked out now are when somebody sends something next.</summary>
    private static async Task KeepLists(OfficeConnection office, int house, int arrival, HouseLog log, CancellationToken stop)
    {
        try
        {
            await office.KeepLists(house, arrival, HouseLists.Of(log.House), stop).ConfigureAwait(false);
        }
        catch (OfficeException)
        {
            // Said by the view of the houses: changes_behind.
        }
    }

    private sealed record Reached(int Arrival, Guid Token, HeldChanges Held);

    /// <summary>
    /// The house at the office, those points of the mark that are still the office's past, and the first news where the highest one says after what.
    /// </summary>
    private static async Task<(int House, ImmutableArray<OfficePoint> Points, IReadOnlyList<ArrivedChange>? First)> Known(
        OfficeConnection office, HouseLog mine, ExchangeMark? mark, bool sends,
        CancellationToken stop)
    {
        foreach (var point in mark?.Points.OrderByDescending(p => p.Arrival) ?? Enumerable.Empty<OfficePoint>())
        {
            try
            {
                var goesOn = HeldChanges.Read(point.Held).Value.IsIn(mine);
                var first = await office.Fetch(mark!.House, point.Arrival, point.Token, goesOn ? FetchedAtATime : 0, stop).ConfigureAwait(false);
                return (mark.House, [.. mark.Points.Where(p => p.Arrival <= point.Arrival).OrderByDescending(p => p.Arrival)], goesOn ? first : null);
            }
            catch (OfficeException failed) when (failed.IsAnotherPast || failed.Fault == OfficeFault.NotAllowed)
            {
                // Put back from a backup, or another office: the points below may still be right, and else all is exchanged from the beginning.
            }
        }
        var found = await office.Find([.. mine.Changes.Take(NamesToFindBy).Select(c => c.Id.ToString())], stop).ConfigureAwait(false);
        if (found is null && !sends)
            throw new OfficeException(OfficeFault.NotAllowed, "The office does not have this house, or does not let this device see it.");
        return (found ?? await office.Begin(mine.Changes[0].Id.ToString(), stop).ConfigureAwait(false), [], null);
    }

    private static async Task<Reached> FetchAll(OfficeConnection office, int house, Reached reached, List<Change> came, Action<string> says,
        CancellationToken stop, IReadOnlyList<ArrivedChange>? begun = null)
    {
        var characters = 0L;
        while (true)
        {
            stop.ThrowIfCancellationRequested();
            var batch = begun ?? await office.Fetch(house, reached.Arrival, reached.Token, FetchedAtATime, stop).ConfigureAwait(false);
            begun = null;
            if (batch.Count == 0)
                return reached;
            var first = came.Count;
            foreach (var arrived in batch)
            {
                var change = ChangeJson.Read(arrived.Line);
                if (!change.Ok)
                {
                    throw new OfficeException(OfficeFault.BadData, string.Create(CultureInfo.InvariantCulture,
                        $"What arrived at the office under number {arrived.Arrival} can't be read: {change.Reason} Nothing was taken in."));
                }
                came.Add(change.Value);
                characters += arrived.Line.Length;
            }
            if (came.Count > MostChanges || characters > MostCharacters)
                throw new OfficeException(OfficeFault.BadData, $"The office has more than {MostChanges} changes, or 128 MiB, of this house: that is no house.");
            reached = new(batch[^1].Arrival, batch[^1].Token, reached.Held.With(HeldChanges.Of(came.Skip(first).Select(c => c.Id))));
            says($"{NumberText.Counted(came.Count, "change")} fetched");
            if (batch.Count < FetchedAtATime)
                return reached;
        }
    }

    /// <summary>This house with what came, through the same gate as any other copy.</summary>
    private static Merge Together(HouseLog mine, List<Change> came)
    {
        var fresh = came.Where(c => mine.Find(c.Id) is null || ChangeJson.Write(mine.Find(c.Id)!) != ChangeJson.Write(c)).ToList();
        var both = HouseLog.Of(mine.Changes.Concat(fresh)).Then<HouseLog>(log => (log.Jump ?? log.Mixed) is { } why ? new Refusal(why) : log)
            .Then(log => mine.Changes.IsEmpty ? new Merge(log, [.. log.Changes], [], []) : Merge.Of(mine, log));
        return both.Ok ? both.Value : throw new OfficeException(OfficeFault.BadData, $"What came from the office was not taken in: {both.Reason}");
    }

    private static IEnumerable<List<(ChangeId Id, string Line)>> Portions(IEnumerable<Change> changes)
    {
        var (portion, bytes) = (new List<(ChangeId, string)>(), 0);
        foreach (var change in changes)
        {
            var line = ChangeJson.Write(change);
            var size = Encoding.UTF8.GetByteCount(line);
            if (portion.Count > 0 && (portion.Count == SentAtATime || bytes + size > SentBytesAtATime))
            {
                yield return portion;
                (portion, bytes) = ([], 0);
            }
            portion.Add((change.Id, line));
            bytes += size;
        }
        if (portion.Count > 0)
            yield return portion;
    }
}
