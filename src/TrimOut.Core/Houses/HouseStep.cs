using System.Collections.Immutable;
using TrimOut.Core.History;

namespace TrimOut.Core.Houses;

/// <summary>How a house came from the one before it, so that what was worked out for that one can be kept.</summary>
/// <param name="Before">The items of the house before.</param>
/// <param name="Edits">What was done to them.</param>
internal sealed record HouseStep(ImmutableDictionary<string, Item> Before, ImmutableArray<Edit> Edits);
