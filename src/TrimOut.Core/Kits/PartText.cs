using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using System.Text.Unicode;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Houses;
using TrimOut.Core.Units;

namespace TrimOut.Core.Kits;

/// <summary>A part as text, a line for each value: what is kept in a folder of kits, and can be read and written by hand.</summary>
/// <remarks>
/// Lines are "name: value"; "?" before a name says that nobody held the value against the sheet, and so does a file that does not say who held its values
/// and when, against which sheet and edition where it names them, or that they were held against another one than it has now; "#" begins a remark.
/// </remarks>
public static class PartText
{
    private const int Newest = 1;
    private const string Form = "1";
    private const string FormName = "trimout-part";
    private const string HeldBefore = "held-";
    private const char NotHeld = '?';

    /// <summary>The text of a part, which <see cref="Read(string)"/> reads to the same part.</summary>
    public static string Write(PartSheet part)
    {
        var text = new StringBuilder();
        Line(FormName, Form);
        Line("kind", KebabCase.Of(part.Kind));
        Line("name", part.Name);
        foreach (var name in AboutSheet.Names.Where(part.About.ContainsKey))
            Line(name, part.About[name]);
        foreach (var name in AboutSheet.WhichSheet.Where(n => part.About.ContainsKey(n) && part.Values.Any(v => v.Held)))
            Line(HeldBefore + name, part.About[name]);
        text.Append('\n');
        foreach (var value in part.Values)
            Line($"{(value.Held ? "" : $"{NotHeld} ")}{value.Fact.Name}", Written(value, part.WrittenIn));
        return text.ToString();

        void Line(string name, string value) => text.Append(CultureInfo.InvariantCulture, $"{name}: {value}\n");
    }

    /// <summary>A length in the units of its house where it reads back to the same one; else, and any other value, in its stored form.</summary>
    private static string Written(SheetValue value, DisplayUnits? units) =>
        units is { } shown && value.Fact is Fact<Length> && value.Fact.ShowStored(value.Stored, In(shown)) is var text
        && Stored(value.Fact, text) is { Ok: true } back && back.Value == value.Stored ? text : value.Stored;

    /// <summary>Whether two parts say the same of the same sheet, in whatever units.</summary>
    /// <param name="one">One.</param>
    /// <param name="other">The other.</param>
    public static bool IsSame(PartSheet one, PartSheet other) => Write(one with { WrittenIn = null }) == Write(other with { WrittenIn = null });

    /// <summary>Reads a part as it lies on the disk, which is UTF-8.</summary>
    public static Result<PartSheet> Read(ReadOnlySpan<byte> file)
    {
        var rest = file;
        for (var number = 1; !rest.IsEmpty; number++)
        {
            var end = rest.IndexOf((byte)'\n') is >= 0 and var at ? at + 1 : rest.Length;
            if (!Utf8.IsValid(rest[..end]))
                return new Refusal(string.Create(CultureInfo.InvariantCulture,
                    $"Line {number} is not UTF-8. Save the file as UTF-8 text, and look at that line."));
            rest = rest[end..];
        }
        return Read(Encoding.UTF8.GetString(file));
    }

    /// <summary>Reads a part; the first line that can't be read refuses it whole, by its number.</summary>
    public static Result<PartSheet> Read(string text)
    {
        ItemKind? kind = null;
        string? name = null, form = null;
        var heldAgainst = new Dictionary<string, string>(StringComparer.Ordinal);
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
                if (field == FormName && int.TryParse(typed, NumberStyles.None, CultureInfo.InvariantCulture, out var newer) && newer > Newest)
                    return Bad($"the file is of a newer form ({typed}) than this TrimOut reads ({Form}). Take it with a newer TrimOut");
                if (field != FormName || typed != Form)
                    return Bad($"a part begins with \"{FormName}: {Form}\"");
                form = typed;
            }
            else if (field == "kind")
            {
                if (kind is not null)
                    return Bad("kind stands there twice: a file holds one part");
                kind = KebabCase.Read<ItemKind>(typed) is { } read && FactTable.IsKit(read) ? read : null;
                if (kind is null)
                    return Bad($"\"{typed}\" is no sort of part");
            }
            else if (kind is not { } sort)
                return Bad("say its kind before anything else");
            else if (AboutSheet.WhichSheet.FirstOrDefault(n => field == HeldBefore + n) is { } against)
            {
                if (!heldAgainst.TryAdd(against, typed))
                    return Bad($"{field} stands there twice");
            }
            else if (FactTable.Find(sort, field) is not { IsKeyed: false } fact
                || (field != "name" && !AboutSheet.Is(fact) && !SheetValues.Of(sort).Contains(fact)))
                return Bad($"a {KebabCase.Of(sort).Replace('-', ' ')} has no {field} on its sheet");
            else if (Stored(fact, typed) is var stored && !stored.Ok)
                return Bad(stored.Reason!);
            else if (field == "name" ? name is not null : about.ContainsKey(field) || values.Any(v => v.Fact == fact))
                return Bad($"{field} stands there twice");
            else if (field == "name")
                name = stored.Value;
            else if (AboutSheet.Is(fact))
                about[field] = stored.Value;
            else
                values.Add(new SheetValue(fact, stored.Value, held));
        }
        var differ = heldAgainst.Where(h => !SameName.Comparer.Equals(h.Value, about.GetValueOrDefault(h.Key))).ToList();
        var other = differ.Select(h => $"{HeldBefore}{h.Key}: {h.Value}, and {h.Key}: {about.GetValueOrDefault(h.Key)}").ToList();
        var unknown = values.Exists(v => v.Held) ? AboutSheet.WhichSheet.Where(n => about.ContainsKey(n) && !heldAgainst.ContainsKey(n)).ToList() : [];
        var counts = about.ContainsKey(AboutSheet.HeldBy) && about.ContainsKey(AboutSheet.HeldOn) && other.Count + unknown.Count == 0;
        return kind is not { } of ? new Refusal("It says no kind.")
            : name is null ? new Refusal("It says no name.")
            : new PartSheet(of, name, about.ToImmutable(),
                [.. SheetValues.Of(of).SelectMany(f => values.Where(v => v.Fact == f)).Select(v => v with { Held = v.Held && counts })])
            {
                HeldAgainstOther = other.Count == 0 ? null : string.Join("; ", other),
                IsHeldAgainstOtherSheet = differ.Exists(h => h.Key == AboutSheet.Sheet),
                HeldAgainstUnknown = unknown.Count == 0 ? null : string.Join(" and ", unknown),
            };

        Refusal Bad(string why) => new(string.Create(CultureInfo.InvariantCulture, $"Line {number}: {Line(why.TrimEnd('.'))}."));
    }

    /// <summary>Of a very long reason its beginning, which says what is wrong, and its end, which says what to do.</summary>
    private static string Line(string why)
    {
        const int end = 90;
        return why.Length <= end * 3 ? why : $"{why[..end]} … {why[^end..]}";
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
