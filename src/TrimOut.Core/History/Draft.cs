using System.Collections.Immutable;
using System.Globalization;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;

namespace TrimOut.Core.History;

/// <summary>A change that somebody wants, before it has a name, a time and an author.</summary>
/// <param name="What">What it is, in words for the history screen.</param>
/// <param name="Edits">Its edits; values are not yet said to replace anything.</param>
public sealed record Draft(string What, ImmutableArray<Edit> Edits)
{
    internal const char NewItemMark = '\u0001';

    /// <summary>A draft with no edits yet.</summary>
    public Draft(string what) : this(what, []) { }

    /// <summary>Adds a new item.</summary>
    /// <param name="kind">What it is.</param>
    /// <param name="under">The id of the item it belongs to.</param>
    /// <param name="id">A stand-in for its id, good inside this draft.</param>
    public Draft New(ItemKind kind, string under, out string id)
    {
        id = NewItemMark + Edits.OfType<Edit.Add>().Count().ToString(CultureInfo.InvariantCulture);
        return With(new Edit.Add(id, kind, under));
    }

    /// <summary>Puts a value to a fact of an item.</summary>
    public Draft Put<T>(string item, Fact<T> fact, T value, string? key = null)
        where T : notnull => PutStored(item, fact.Field(key), fact.Write(value));

    /// <summary>Puts a value to a fact where there is one to put.</summary>
    public Draft PutIf<T>(string item, Fact<T> fact, T? value)
        where T : struct => value is { } known ? Put(item, fact, known) : this;

    /// <summary>Puts a value to a fact where there is one to put.</summary>
    public Draft PutIf<T>(string item, Fact<T> fact, T? value)
        where T : class => value is { } known ? Put(item, fact, known) : this;

    /// <summary>Puts a value in its stored form to a field; null takes it away.</summary>
    public Draft PutStored(string item, string field, string? stored) => With(new Edit.Put(item, field, stored, []));

    /// <summary>This draft and another's edits.</summary>
    public Draft And(Draft other) => this with { Edits = Edits.AddRange(other.Edits) };

    private Draft With(Edit edit) => this with { Edits = Edits.Add(edit) };
}
