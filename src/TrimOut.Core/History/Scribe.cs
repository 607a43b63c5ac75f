using System.Collections.Immutable;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Units;

namespace TrimOut.Core.History;

/// <summary>Writes changes into an open house: names them, stamps them, has them saved, and keeps the house that they make.</summary>
public sealed class Scribe
{
    private readonly IHouseStore _store;
    private readonly TimeProvider _clock;
    private long _sequence;

    /// <summary>A scribe for an open house.</summary>
    /// <param name="store">Where its changes are kept.</param>
    /// <param name="clock">The device's clock.</param>
    /// <param name="by">Whose changes are written.</param>
    /// <exception cref="HouseStoreException">The stored changes contradict each other.</exception>
    public Scribe(IHouseStore store, TimeProvider clock, string by)
    {
        _store = store;
        _clock = clock;
        By = by;
        var log = store.Kept ?? HouseLog.Of(store.Opened);
        Log = log.Ok ? log.Value : throw new HouseStoreException(log.Reason!);
        _sequence = Log.LastOf(store.Device);
    }

    /// <summary>Whose changes are written.</summary>
    public string By { get; set; }

    /// <summary>The list of steps that the work is done by.</summary>
    public StepList Steps { get; init; } = StepList.Shipped;

    /// <summary>The history.</summary>
    public HouseLog Log { get; private set; }

    /// <summary>The house as it stands.</summary>
    public House House => Log.House;

    /// <summary>Where it is kept.</summary>
    public IHouseStore Store => _store;

    /// <summary>When the last change of this session was saved; null before the first.</summary>
    public DateTimeOffset? LastSaved { get; private set; }

    /// <summary>Why the last change could not be saved; null when it was, or none was made.</summary>
    public string? NotSaved { get; private set; }

    /// <summary>What sort of thing <see cref="NotSaved"/> is about.</summary>
    public StoreFault NotSavedFault { get; private set; }

    /// <summary>Today, by the device's clock.</summary>
    public DateOnly Today => DateOnly.FromDateTime(_clock.GetLocalNow().DateTime);

    /// <summary>Saves a change.</summary>
    /// <returns>The change as saved, or why nothing was saved.</returns>
    public Result<Change> Record(Draft draft)
    {
        if (draft.Edits.IsEmpty)
            return new Refusal("There is nothing to save in that.");
        if (_store.ReadOnlyBecause is { } why)
            return new Refusal($"Not saved: {why}");
        if (Log.LargestStamp >= Change.LastStamp || _sequence >= ChangeId.Last)
            return new Refusal("Not saved: a change of this history has the last number there is, so no other can follow it. Go back to a backup from " +
                "before that change was taken in.");
        if (WhyNoTime(_clock.GetLocalNow()) is { } noTime)
            return new Refusal($"Not saved: {noTime}");
        var sequence = _sequence + 1;
        var id = new ChangeId(_store.Device, sequence);
        var change = new Change(id, Log.LargestStamp + 1, _clock.GetLocalNow(), By, draft.What, [.. WithNotes(draft.Edits).Select(e => Settle(e, id))]);
        try
        {
            _store.Append(change);
        }
        catch (HouseStoreException failed)
        {
            (NotSaved, NotSavedFault) = (failed.Message, failed.Fault);
            return new Refusal(failed.Message);
        }
        NotSaved = null;
        _sequence = sequence;
        LastSaved = change.SaidAt;
        Log = Log.With(change);
        return change;
    }

    /// <summary>Why nothing can be saved at a time: a history holds years from 1000 to 2999. Null where it can.</summary>
    /// <param name="now">The time that the machine's clock has.</param>
    public static string? WhyNoTime(DateTimeOffset now) => now.Year is >= 1000 and < 3000 ? null
        : string.Create(System.Globalization.CultureInfo.InvariantCulture,
            $"the clock of this machine says {now:yyyy-MM-dd}, and no change can be of that day. Put the clock right and save again.");

    /// <summary>The change that an undo would take back: this device's latest that is in force; null when there is none.</summary>
    public Change? UndoNext => Mine().FirstOrDefault(c => !IsUndo(c) && Log.IsInForce(c.Id));

    /// <summary>The undo that a redo would take back: the latest, as long as nothing else was done since; null when there is none.</summary>
    public Change? RedoNext => Mine().TakeWhile(IsUndo).FirstOrDefault(c => TargetOf(c) is { } target && !IsUndo(target) && Log.IsInForce(c.Id));

    /// <summary>Takes back the latest change.</summary>
    public Result<Change> Undo() => Undo([]);

    /// <summary>Takes back the latest change together with others that were made for it, in one change that <see cref="Redo"/> brings back.</summary>
    /// <param name="with">The others; those that no longer count are left as they are.</param>
    public Result<Change> Undo(IReadOnlyCollection<Change> with) => UndoNext is not { } last
        ? new Refusal("There is nothing to undo on this laptop.")
        : Record(new Draft($"{UndoWord}{string.Join("; ", with.Reverse().Select(c => c.What).Prepend(last.What))}",
            [new Edit.Undo(last.Id), .. with.Where(c => Log.IsInForce(c.Id)).Select(c => new Edit.Undo(c.Id))]));

    /// <summary>Brings back what was last undone.</summary>
    public Result<Change> Redo() => RedoNext is { } undo
        ? Record(new Draft($"Redo: {WithoutUndo(undo.What)}", [new Edit.Undo(undo.Id)]))
        : new Refusal("There is nothing to redo: something else was done since, or nothing was undone.");

    /// <summary>Takes in what another copy of the house has and this one has not.</summary>
    /// <param name="merge">The two together, as they were looked at; what was done here since then stays.</param>
    /// <returns>The merge as it was saved, or why nothing was taken in.</returns>
    public Result<Merge> TakeIn(Merge merge)
    {
        if (_store.ReadOnlyBecause is { } why)
            return new Refusal($"Not saved: {why}");
        Result<Merge> now = merge.Merged.Changes.Count - merge.New.Length == Log.Changes.Count ? merge : Merge.Of(Log, merge.Merged);
        if (!now.Ok || now.Value.New.IsEmpty)
            return now;
        try
        {
            _store.Take(now.Value.New);
        }
        catch (HouseStoreException failed)
        {
            return new Refusal(failed.Message);
        }
        Log = now.Value.Merged;
        _sequence = Math.Max(_sequence, Log.LastOf(_store.Device));
        LastSaved = _clock.GetLocalNow();
        return now;
    }

    /// <summary>
    /// Takes back what was taken in from another copy, in one change that <see cref="Redo"/> brings back. It is an undo like any other: a copy that takes
    /// it in has it too.
    /// </summary>
    /// <param name="taken">The changes that were taken in; those that no longer count are left as they are.</param>
    public Result<Change> TakeBack(IReadOnlyCollection<Change> taken)
    {
        // The first one tells a redo that this is an undo of work, not of an undo.
        var back = taken.Where(c => Log.IsInForce(c.Id)).OrderBy(IsUndo).ToList();
        return back.Count == 0
            ? new Refusal("Nothing that was taken in counts any more.")
            : Record(new Draft($"{UndoWord}{NumberText.Counted(back.Count, "change")} taken in from {string.Join(", ", taken.Select(c => c.By).Distinct())}",
                [.. back.Select(c => new Edit.Undo(c.Id))]));
    }

    private const string UndoWord = "Undo: ";

    /// <summary>What an undo took back, by its words.</summary>
    public static string WithoutUndo(string what) => what.StartsWith(UndoWord, StringComparison.Ordinal) ? what[UndoWord.Length..] : what;

    /// <summary>This device's changes, the latest first.</summary>
    private IEnumerable<Change> Mine()
    {
        for (var at = Log.Changes.Count - 1; at >= 0; at--)
        {
            if (Log.Changes[at] is var change && change.Id.Device == _store.Device)
                yield return change;
        }
    }

    private static bool IsUndo(Change change) => change.Edits.Any(e => e is Edit.Undo);

    private Change? TargetOf(Change change) => change.Edits.OfType<Edit.Undo>().FirstOrDefault() is { } undo ? Log.Find(undo.Of) : null;

    /// <summary>The edits, and what is noted beside them for whoever reads the history later.</summary>
    private ImmutableArray<Edit> WithNotes(ImmutableArray<Edit> edits) => [.. WithSeen(edits), .. StepVersion.For(House, edits, Steps)];

    /// <summary>A freeze says how far the history was seen: what another laptop had done by then, unknown here, was not frozen.</summary>
    private ImmutableArray<Edit> WithSeen(ImmutableArray<Edit> edits)
    {
        var frozen = edits.OfType<Edit.Put>().Where(p => p.Field == UnitFacts.OrderedOn.Name && p.Value is { Length: > 0 }).ToList();
        if (frozen.Count == 0)
            return edits;
        var seen = Log.Seen.ToString();
        return [.. edits, .. frozen.Select(p => new Edit.Put(p.Item, Companion.Seen(p.Field), seen, []))];
    }

    private Edit Settle(Edit edit, ChangeId id) => edit switch
    {
        Edit.Add add => add with { Item = Named(add.Item, id), Under = Named(add.Under, id) },
        Edit.Put put => put with
        {
            Item = Named(put.Item, id),
            Value = put.Value is not { Length: > 0 } value ? put.Value
                : put.Field == Item.RemovedField ? Log.Seen.ToString()
                : value[0] == Draft.NewItemMark ? Named(value, id) : value,
            Field = put.Field.IndexOf(Draft.NewItemMark, StringComparison.Ordinal) is > 0 and var at ? put.Field[..at] + Named(put.Field[at..], id) : put.Field,
            Over = House.Find(put.Item)?.Heads(put.Field) is { } heads ? [.. heads.Select(h => h.Id)] : ImmutableArray<ChangeId>.Empty,
        },
        _ => edit,
    };

    private static string Named(string item, ChangeId id) =>
        item.Length > 0 && item[0] == Draft.NewItemMark ? $"{id.Device}-{id.Sequence}-{item[1..]}" : item;
}
