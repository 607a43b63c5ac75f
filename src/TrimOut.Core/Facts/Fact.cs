using TrimOut.Core.Houses;
using TrimOut.Core.Phases;

namespace TrimOut.Core.Facts;

/// <summary>One thing that can be known about an item: declared once, used by forms, history, import, papers and checks alike.</summary>
public abstract class Fact
{
    private protected Fact(ItemKind subject, string name, string label, string help, Phase? phase)
    {
        Subject = subject;
        Name = name;
        Label = label;
        Help = help;
        Phase = phase;
    }

    /// <summary>The items that have it.</summary>
    public ItemKind Subject { get; }

    /// <summary>Its stored name, kebab-case, unique for the subject.</summary>
    public string Name { get; }

    /// <summary>Its label on screens and papers.</summary>
    public string Label { get; }

    /// <summary>One sentence for whoever fills it in.</summary>
    public string Help { get; }

    /// <summary>The phase in which it is filled in; null when it is no part of the walk.</summary>
    public Phase? Phase { get; }

    /// <summary>Whether it is measured: then the instrument is kept beside it.</summary>
    public bool IsReading { get; init; }

    /// <summary>Whether there is one value per key (another item's id, a step's id) rather than one.</summary>
    public bool IsKeyed { get; init; }

    /// <summary>Whether it is evidence only where it says more than that something is not there: a name, a licence, what was found.</summary>
    public bool IsMoreThanNone { get; init; }

    /// <summary>Whether its keys are the ids of steps rather than of items.</summary>
    internal bool IsByStep => IsKeyed && Name == Phases.StepMark.FactName;

    /// <summary>A short hint at what may be typed.</summary>
    public abstract string Hint { get; }

    /// <summary>The same for a house: with examples in its own units first.</summary>
    public abstract string HintFor(House house);

    /// <summary>The number of its field among those of its items; not for a keyed fact.</summary>
    internal int Slot => _slot >= 0 ? _slot : _slot = FieldSlots.Of(Subject).Find(Name);

    private int _slot = -1;

    /// <summary>The field that holds it, for a keyed fact the field of that key.</summary>
    public string Field(string? key = null) => IsKeyed ? $"{Name}:{key}" : Name;

    /// <summary>Reads what a person typed, to the stored form.</summary>
    /// <param name="typed">What was typed.</param>
    /// <param name="house">The house.</param>
    /// <param name="today">Which day it is, for a day that is said from there; null where that is not known.</param>
    public abstract Result<string> ReadTyped(string typed, House house, DateOnly? today = null);

    /// <summary>Reads the stored form.</summary>
    internal abstract Result<object> DecodeAny(string stored);

    /// <summary>The stored form of a decoded value.</summary>
    internal abstract string WriteAny(object value);

    /// <summary>Whether its values are a few named ones.</summary>
    public abstract bool IsChoice { get; }

    /// <summary>Shows a decoded value.</summary>
    public abstract string Show(object value, House house);

    /// <summary>Shows a stored value; one that can't be read as it is stored.</summary>
    public string ShowStored(string stored, House house) => DecodeAny(stored) is { Ok: true } decoded ? Show(decoded.Value, house) : stored;

    /// <summary>What it may be, when that is a list.</summary>
    public abstract IReadOnlyList<Option> Options(House house);

    /// <summary>The shown form of an item's value; empty when there is none.</summary>
    public string ShowOf(Item item, House house, string? key = null) => item.Latest(Field(key)) switch
    {
        null or { Stored: null } => "",
        { Value: { } value } => Show(value, house),
        { Stored: var unreadable } => unreadable,
    };
}

/// <summary>A fact whose values are of one type.</summary>
/// <typeparam name="T">The type.</typeparam>
public sealed class Fact<T> : Fact
    where T : notnull
{
    private readonly Form<T> _form;

    internal Fact(ItemKind subject, string name, string label, string help, Phase? phase, Form<T> form)
        : base(subject, name, label, help, phase) => _form = form;

    /// <inheritdoc/>
    public override string Hint => _form.Hint;

    /// <inheritdoc/>
    public override string HintFor(House house) => _form.HintIn(house.DisplayUnits);

    /// <summary>The stored form of a value.</summary>
    public string Write(T value) => _form.Write(value);

    /// <inheritdoc/>
    public override Result<string> ReadTyped(string typed, House house, DateOnly? today = null) =>
        _form.Read(typed.Trim(), house, today).Then<string>(v => _form.Write(v));

    /// <inheritdoc/>
    public override bool IsChoice => _form.IsChoice;

    /// <inheritdoc/>
    internal override string WriteAny(object value) => _form.Write((T)value);

    /// <inheritdoc/>
    internal override Result<object> DecodeAny(string stored) => _form.Decode(stored).Then<object>(v => v);

    /// <inheritdoc/>
    public override string Show(object value, House house) => _form.Show((T)value, house);

    /// <inheritdoc/>
    public override IReadOnlyList<Option> Options(House house) => _form.Options(house);
}
