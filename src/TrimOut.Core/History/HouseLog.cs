using System.Collections.Frozen;
using System.Collections.Immutable;
using TrimOut.Core.Houses;

namespace TrimOut.Core.History;

/// <summary>All changes of a house in their agreed order, and the house that they make.</summary>
public sealed class HouseLog
{
    // What was folded at once is looked up in a table that never changes; what was added since, in one that grows.
    private readonly FoldedChanges _folded;
    private readonly ImmutableDictionary<ChangeId, Change> _since;
    private readonly FrozenDictionary<ChangeId, ChangeId> _undone;
    private readonly PastHouses _past;
    private ImmutableList<Change>? _changes;
    private int _goneOn;

    private HouseLog(FoldedChanges folded, ImmutableList<Change> late, ImmutableDictionary<ChangeId, Change> since,
        FrozenDictionary<ChangeId, ChangeId> undone, House house, PastHouses? past = null, ImmutableList<Change>? changes = null)
    {
        _past = past ?? new PastHouses();
        _changes = changes;
        House = house;
        Late = late;
        _folded = folded;
        _since = since;
        _undone = undone;
    }

    /// <summary>The log of a fold that was kept; its changes are read when somebody asks for them.</summary>
    internal HouseLog(FoldedChanges folded, FrozenDictionary<ChangeId, ChangeId> undone, House house)
        : this(folded, [], ImmutableDictionary<ChangeId, Change>.Empty, undone, house) { }

    /// <summary>No changes yet.</summary>
    public static HouseLog Empty { get; } = new(new FoldedChanges([], []), FrozenDictionary<ChangeId, ChangeId>.Empty, House.Empty);

    /// <summary>The changes, in the order in which they are replayed.</summary>
    public ImmutableList<Change> Changes => _changes ??= _folded.Ordered.AddRange(Late);

    /// <summary>What was folded at once.</summary>
    internal FoldedChanges Folded => _folded;

    /// <summary>The changes that came after what was folded at once, in their order.</summary>
    internal ImmutableList<Change> Late { get; }

    /// <summary>How many changes came after what was folded at once.</summary>
    public int SinceFolded => Late.Count;

    /// <summary>The changes that were undone, each with the change that undid it.</summary>
    internal FrozenDictionary<ChangeId, ChangeId> Undone => _undone;

    /// <summary>How far each device's changes are seen here.</summary>
    internal Seen Seen => _folded.Seen.With(Late.Select(c => c.Id));

    /// <summary>How far the history is seen here, in words to be kept beside what was made of it; see <see cref="Since"/>.</summary>
    public string Extent => Seen.ToString();

    /// <summary>The changes that whoever kept an extent had not seen, in the agreed order; all of them where it can't be read.</summary>
    public IEnumerable<Change> Since(string extent) => Seen.Read(extent) is { } seen ? Changes.Where(c => !seen.Covers(c.Id)) : Changes;

    /// <summary>The last change, by its stamp and name; null when there is none.</summary>
    internal (long Stamp, ChangeId Id)? Last => Late.IsEmpty ? _folded.Last : (Late[^1].Stamp, Late[^1].Id);

    /// <summary>The ids of all items that were ever added, also of those whose adding was undone; and of the house itself.</summary>
    internal HashSet<string> Added =>
    [
        .. House.Items.Values.Select(i => i.Id), .. _folded.TakenBack ?? Changes.SelectMany(c => c.Edits).OfType<Edit.Add>().Select(a => a.Item),
        .. Late.SelectMany(c => c.Edits).OfType<Edit.Add>().Select(a => a.Item),
    ];

    /// <summary>The house.</summary>
    public House House { get; }

    /// <summary>The largest stamp so far; 0 when there is no change.</summary>
    public long LargestStamp => Last?.Stamp ?? 0;

    /// <summary>The largest number of a device's changes; 0 when it has none.</summary>
    /// <param name="device">The device.</param>
    public long LastOf(string device) => Seen.LastOf(device);

    /// <summary>The log of these changes, in whatever order they come; a change that comes twice counts once.</summary>
    /// <returns>The log, or which change came twice with different contents.</returns>
    public static Result<HouseLog> Of(IEnumerable<Change> changes)
    {
        var byId = new Dictionary<ChangeId, Change>();
        var ordered = new List<Change>();
        var sorted = true;
        foreach (var change in changes)
        {
            if (byId.TryAdd(change.Id, change))
            {
                sorted &= ordered.Count == 0 || Change.Order(ordered[^1], change) < 0;
                ordered.Add(change);
            }
            else if (byId[change.Id] is var seen && !ReferenceEquals(seen, change) && ChangeJson.Write(seen) != ChangeJson.Write(change))
            {
                return new Refusal($"Change {change.Id} is there twice with different contents. Neither was picked.");
            }
        }
        if (!sorted)
            ordered.Sort(Change.Order);
        var (house, undone) = Fold.All(ordered);
        return new HouseLog(new FoldedChanges([.. ordered], byId), undone, house);
    }

    /// <summary>Where the stamps or a device's numbers leave so large a gap that it is no history; null when nowhere.</summary>
    /// <remarks>A stamp is one more than the largest seen, so a whole history has no gaps at all, and one with losses only small ones.</remarks>
    public string? Jump
    {
        get
        {
            var (stamp, last) = (0L, new Dictionary<string, long>(StringComparer.Ordinal));
            foreach (var change in Changes)
            {
                if (change.Stamp - stamp > LargestGap)
                    return $"Change {change.Id} has the stamp {change.Stamp}, and the one before it {stamp}: so many changes can't be missing between the two.";
                stamp = change.Stamp;
                var number = last.GetValueOrDefault(change.Id.Device);
                if (change.Id.Sequence - number > LargestGap)
                    return $"Change {change.Id} comes after number {number} of that device: so many changes can't be missing between the two.";
                last[change.Id.Device] = Math.Max(number, change.Id.Sequence);
            }
            return null;
        }
    }

    private const long LargestGap = 1_000_000_000;

    /// <summary>Why this is the history of two houses that were put together; null where nothing shows that it is.</summary>
    /// <remarks>A stamp is one more than the largest seen, so in one house only its very first change, made before any copy, can have the stamp 1.</remarks>
    public string? Mixed => Changes is [{ Stamp: 1 } first, { Stamp: 1 } second, ..]
        ? $"Change {first.Id} and change {second.Id} both begin a house: these are the histories of two houses, and no house is made of both."
        : null;

    /// <summary>The change with that name; null when there is none.</summary>
    public Change? Find(ChangeId id) => _since.GetValueOrDefault(id) ?? _folded.Find(id);

    /// <summary>Whether a change counts: it is there and no undo in force is about it.</summary>
    public bool IsInForce(ChangeId id) => Find(id) is not null && !_undone.ContainsKey(id);

    /// <summary>The house as a draft would leave it, without anything being recorded.</summary>
    /// <param name="house">The house.</param>
    /// <param name="draft">The draft.</param>
    /// <param name="saidAt">When it would be said; checks judge the days of what is written by it.</param>
    public static House Preview(House house, Draft draft, DateTimeOffset saidAt = default) => Fold.Replacing(house, draft, saidAt);

    /// <summary>This log and one more change.</summary>
    /// <exception cref="ArgumentException">A change with that name is there already.</exception>
    public HouseLog With(Change change)
    {
        if (Find(change.Id) is not null)
            throw new ArgumentException($"Change {change.Id} is there already.", nameof(change));
        var isLast = Last is not { } last || Change.Order(last.Stamp, last.Id, change.Stamp, change.Id) < 0;
        if (isLast && IsAboutWhatIsThere(change))
            return Next(change, Fold.One(House, change), _undone);
        return isLast && !_undone.ContainsKey(change.Id) && Undoing.On(House, _undone, Changes.Add(change)) is var (house, undone)
            ? Next(change, house, undone)
            : Of(Changes.Add(change)).Value;
    }

    private HouseLog Next(Change last, House house, FrozenDictionary<ChangeId, ChangeId> undone) =>
        new(_folded, Late.Add(last), _since.Add(last.Id, last), undone, house, PastOfNext(), _changes?.Add(last));

    /// <summary>The house as it stood when it had its first so many changes and no more.</summary>
    /// <remarks>
    /// The order is the one that all laptops agree on. What comes later in it does not count yet, undos among it: a change that was
    /// undone later is in force here. What another laptop did before counts, even where nobody here could know of it yet.
    /// </remarks>
    /// <param name="count">How many of <see cref="Changes"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">There are not so many.</exception>
    public House At(int count)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(count);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(count, Changes.Count);
        return count == Changes.Count ? House : _past.At(Changes, count);
    }

    /// <summary>The house as it stood when a change was the last one in the agreed order; null when there is no such change.</summary>
    public House? At(ChangeId id) => Find(id) is { } change ? At(Changes.BinarySearch(change, Comparer<Change>.Create(Change.Order)) + 1) : null;

    /// <summary>
    /// How many changes there were at the end of a day: up to the last one in the agreed order that was made by then, as the clock of its laptop had it.
    /// </summary>
    public int CountAt(DateOnly day) => Changes.FindLastIndex(c => DateOnly.FromDateTime(c.SaidAt.DateTime) <= day) + 1;

    /// <summary>The house as it stood at the end of a day; see <see cref="CountAt"/>.</summary>
    public House At(DateOnly day) => At(CountAt(day));

    /// <summary>Houses of the past go on with the first log that follows on this one; another one that does has a history of its own from here.</summary>
    private PastHouses PastOfNext() => Interlocked.Exchange(ref _goneOn, 1) == 0 ? _past : _past.UpTo(Changes.Count);

    /// <summary>
    /// Whether a change can be put on top of the house: it undoes nothing, no undo was there before it, and it is about no item whose adding was undone.
    /// </summary>
    private bool IsAboutWhatIsThere(Change change) => !change.Edits.Any(e => e is Edit.Undo)
        && (_undone.Count == 0 || (!_undone.ContainsKey(change.Id) && PastHouses.IsAboutWhatIsThere(change, House)));
}
