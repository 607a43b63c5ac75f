using System.Collections.Immutable;
using System.Security.Cryptography;
using System.Text;
using TrimOut.Core.History;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;

namespace TrimOut.Core.Decisions;

/// <summary>Something on which two copies of a house disagree, and the ways out: for screens and for <c>trimout conflicts</c> alike.</summary>
/// <param name="Item">The item that it is about.</param>
/// <param name="About">What the copies disagree about, with the item's name.</param>
/// <param name="Ways">What can be chosen; of values the last is the one that is shown until somebody chooses.</param>
/// <param name="Id">Its name: the same as long as it is open and the same ways lead out of it, whatever else is settled meanwhile.</param>
public sealed record Conflict(Item Item, string About, ImmutableArray<ConflictWay> Ways, string Id)
{
    private const int IdLength = 5;

    /// <summary>All of a house: values first, then what one removed while another went on with it, each in the order in which items were added.</summary>
    public static IEnumerable<Conflict> All(House house) => Disagreement.All(house).Select(d => Of(d, house))
        .Concat(RemovedAtWork.All(house).Select(r => Of(r, house)));

    /// <summary>A detail to which two laptops gave different values.</summary>
    public static Conflict Of(Disagreement disagreement, House house) => new(disagreement.Item,
        $"{house.NameOf(disagreement.Item)}: {Label(disagreement, house)}:",
        [.. disagreement.Heads.Select(h => new ConflictWay(disagreement.Show(h, house), ChooseValue.Of(house, disagreement, h)))],
        Called(disagreement.Item, disagreement.Fact.Field(disagreement.Key), disagreement.Heads));

    /// <summary>An item that one laptop removed while another went on with it.</summary>
    public static Conflict Of(RemovedAtWork removal, House house)
    {
        var (away, back) = removal.Item.Removed ? ("leave it removed", "bring it back with all it had") : ("remove it again", "leave it in");
        return new(removal.Item, $"{house.NameOf(removal.Item)}: {removal.Show(house)}",
            [new(away, RemoveItems.Settle(house, removal, back: false)), new(back, RemoveItems.Settle(house, removal, back: true))],
            Called(removal.Item, Item.RemovedField, removal.Work.Select(w => w.Head).Prepend(removal.Removal)));
    }

    private static string Called(Item item, string field, IEnumerable<Head> heads) => Convert.ToHexStringLower(
        SHA256.HashData(Encoding.UTF8.GetBytes($"{item.Id} {field} {string.Join(' ', heads.Select(h => h.Id))}")))[..IdLength];

    /// <summary>What the detail is called: a step by its own name, what is noted of several things with the one that it is of.</summary>
    private static string Label(Disagreement of, House house) => of.Key is not { } key ? of.Fact.Label
        : StepList.Find(key) is { } step && step.Field == of.Fact.Field(key) ? step.Label
        : house.Find(key) is { } item ? $"{of.Fact.Label}, {house.NameOf(item)}"
        : of.Fact.Label;
}

/// <summary>One way out of a conflict.</summary>
/// <param name="Says">What it is: a value with who put it and when, or what to do.</param>
/// <param name="Draft">What it changes, or why it can't be done.</param>
public sealed record ConflictWay(string Says, Result<Draft> Draft);
