using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Houses;
using TrimOut.Core.Units;

namespace TrimOut.Core.Kits;

/// <summary>A part as text, a line for each value: what is kept in a folder of kits, and can be read and written by hand.</summary>
/// <remarks>Lines are "name: value"; "?" before a name says that nobody held the value against the sheet; "#" begins a remark.</remarks>
public static class PartText
{
    private const string Form = "1";
    private const string FormName = "trimout-part";
    private const char NotHeld = '?';

    /// <summary>The text of a part, which <see cref="Read"/> reads to the same part.</summary>
    public static string Write(PartSheet part)
    {
        var text = new StringBuilder();
        Line(FormName, Form);
        Line("kind", KebabCase.Of(part.Kind));
        Line("name", part.Name);
        foreach (var name in AboutSheet.Names.Where(part.About.ContainsKey))
            Line(name, part.About[name]);
        text.Append('\n');
        foreach (var value in part.Values)
            Line($"{(value.Held ? "" : $"{NotHeld} ")}{value.Fact.Name}", value.Stored);
        return text.ToString();

        void Line(string name, string value) => text.Append(CultureInfo.InvariantCulture, $"{name}: {value}\n");
    }

    /// <summary>Reads a part; the first line that can't be read refuses it whole, by its number.</summary>
    public static Result<PartSheet> Read(string text)
    {
        ItemKind? kind = null;
        string? name = null, form = null;
        var about = ImmutableSortedDictionary.CreateBuilder<string, string>(StringComparer.Ordinal);
        var values = new List<SheetValue>();
        var number = 0;
        foreach (var raw in text.ReplaceLineEndings("\n").Split('\n'))
        {
            number++;
            var line = raw.Trim('\uFEFF', ' ', '\t');
            if (line.Length == 0 || line[0] == '#')
                continue;
            var colon = line.IndexOf(':', StringComparison.Ordinal);
            if (colon < 0)
                return Bad("write a name, a colon and a value");
            var (held, field, typed) = (line[0] != NotHeld, line[..colon].TrimStart(NotHeld).Trim(), line[(colon + 1)..].Trim());
            if (form is null)
            {
                if (field != FormName || typed != Form)
                    return Bad($"a part begins with \"{FormName}: {Form}\"");
                form = typed;
            }
            else if (field == "kind")
            {
                kind = KebabCase.Read<ItemKind>(typed) is { } read && FactTable.IsKit(read) ? read : null;
                if (kind is null)
                    return Bad($"\"{typed}\" is no sort of part");
            }
            else if (kind is not { } sort)
                return Bad("say its kind before anything else");
            else if (FactTable.Find(sort, field) is not { IsKeyed: false } fact
                || (field != "name" && !AboutSheet.Is(fact) && !SheetValues.Of(sort).Contains(fact)))
                return Bad($"a {KebabCase.Of(sort).Replace('-', ' ')} has no {field} on its sheet");
            else if (Stored(fact, typed) is var stored && !stored.Ok)
                return Bad(stored.Reason!);
            else if (field == "name")
                name = stored.Value;
            else if (AboutSheet.Is(fact))
                about[field] = stored.Value;
            else if (values.Any(v => v.Fact == fact))
                return Bad($"{field} stands there twice");
            else
                values.Add(new SheetValue(fact, stored.Value, held));
        }
        return kind is not { } of ? new Refusal("It says no kind.")
            : name is null ? new Refusal("It says no name.")
            : new PartSheet(of, name, about.ToImmutable(), [.. SheetValues.Of(of).SelectMany(f => values.Where(v => v.Fact == f))]);

        Refusal Bad(string why) => new(string.Create(CultureInfo.InvariantCulture, $"Line {number}: {why.TrimEnd('.')}."));
    }

    /// <summary>What was typed, in its stored form; a length must say its unit, for no house says what a bare number means.</summary>
    private static Result<string> Stored(Fact fact, string typed)
    {
        var inches = fact.ReadTyped(typed, In(DisplayUnits.Inches));
        var other = fact is Fact<Length> ? fact.ReadTyped(typed, In(DisplayUnits.Millimetres)) : inches;
        return inches.Ok == other.Ok && (!inches.Ok || inches.Value == other.Value) ? inches : new Refusal($"{fact.Name} says no unit: in or mm, ft or m");
    }

    private static House In(DisplayUnits units) => HouseLog.Preview(House.Empty, NewHouse.WithoutKit("Any", units).Value);
}
