using System.Collections.Immutable;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks;

/// <summary>A field of an item: where a finding can be mended.</summary>
/// <param name="Item">The item's id.</param>
/// <param name="Field">The field.</param>
public sealed record FieldRef(string Item, string Field)
{
    /// <summary>The field that a fact of an item is kept in.</summary>
    public static FieldRef To(Item item, Fact fact, string? key = null) => new(item.Id, fact.Field(key));
}

/// <summary>How a figure was worked out, for whoever asks.</summary>
/// <remarks>The inputs are printed only when somebody asks: most rules hold, and nobody looks.</remarks>
public sealed class Working : IEquatable<Working>
{
    private readonly Func<ImmutableArray<(string Name, string Value)>> _print;
    private ImmutableArray<(string Name, string Value)> _inputs;

    private Working(string formula, Func<ImmutableArray<(string Name, string Value)>> print)
    {
        Formula = formula;
        _print = print;
    }

    /// <summary>The formula in words and letters.</summary>
    public string Formula { get; }

    /// <summary>Each input with its value as shown, and the results.</summary>
    public ImmutableArray<(string Name, string Value)> Inputs => _inputs.IsDefault ? _inputs = _print() : _inputs;

    /// <summary>A formula and its inputs.</summary>
    public static Working Of(string formula, Func<ImmutableArray<(string Name, string Value)>> inputs) => new(formula, inputs);

    /// <inheritdoc/>
    public bool Equals(Working? other) => other is not null && Formula == other.Formula && Inputs.SequenceEqual(other.Inputs);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as Working);

    /// <inheritdoc/>
    public override int GetHashCode() => Formula.GetHashCode(StringComparison.Ordinal);
}

/// <summary>What a check found about one subject. A missing detail is never a pass.</summary>
public abstract record Outcome
{
    private Outcome() { }

    /// <summary>The rule holds.</summary>
    /// <param name="Working">How that was worked out, where figures are involved.</param>
    public sealed record Fine(Working? Working = null) : Outcome;

    /// <summary>The rule does not apply to this subject.</summary>
    public sealed record DoesNotApply : Outcome;

    /// <summary>Facts are missing, so nothing can be said.</summary>
    /// <param name="Missing">What is missing, as it follows "missing: ".</param>
    /// <param name="FillIn">The first field to fill in, where there is one.</param>
    public sealed record NotChecked(Sentence Missing, FieldRef? FillIn = null) : Outcome;

    /// <summary>The rule is broken.</summary>
    /// <param name="Message">What is wrong, with enough digits to show the fault.</param>
    /// <param name="Mend">The cheapest mend now.</param>
    /// <param name="Mends">The field that mends it.</param>
    /// <param name="Working">How that was worked out, where figures are involved.</param>
    public sealed record Found(Sentence Message, Sentence Mend, FieldRef Mends, Working? Working = null) : Outcome
    {
        /// <summary>Further faults of the same subject: each is a finding of its own, and none of them is waived with this one.</summary>
        public ImmutableArray<Found> Also { get; init; } = [];

        /// <summary>How the same fault is told of other items, where the order of the walk says of which it is told: a waiver of any of these holds.</summary>
        public ImmutableArray<Told> ToldOf { get; init; } = [];

        /// <summary>
        /// The values that this fault rests on, where one judgment reads others too, for further faults; empty where it rests on all that was read.
        /// </summary>
        public ImmutableArray<FieldRef> RestsOn { get; init; } = [];

        /// <summary>Whether it rests on a value.</summary>
        /// <param name="value">The value, as a field of its part.</param>
        public bool IsBy(FieldRef value) => RestsOn.IsEmpty || RestsOn.Contains(value);

        /// <summary>This fault and the further ones.</summary>
        public IEnumerable<Found> Each => Also.Select(a => a).Prepend(this with { Also = [] });

        /// <inheritdoc/>
        public bool Equals(Found? other) => other is not null && Message.Equals(other.Message) && Mend.Equals(other.Mend) && Mends == other.Mends
            && Equals(Working, other.Working) && Also.SequenceEqual(other.Also) && ToldOf.SequenceEqual(other.ToldOf)
            && RestsOn.SequenceEqual(other.RestsOn);

        /// <inheritdoc/>
        public override int GetHashCode() => HashCode.Combine(Message, Mends);
    }

    /// <summary>A fault as it is told of an item.</summary>
    /// <param name="Item">The id of the item.</param>
    /// <param name="Message">What is wrong, as it is said of it.</param>
    public sealed record Told(string Item, Sentence Message);

    /// <summary>All faults of one subject, each to be a finding of its own; null where there is none.</summary>
    public static Found? All(params IEnumerable<Found?> faults) =>
        faults.OfType<Found>().SelectMany(f => f.Each).ToImmutableArray() is [var first, .. var rest] ? first with { Also = rest } : null;
}
