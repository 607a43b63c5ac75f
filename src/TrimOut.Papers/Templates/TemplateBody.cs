using System.Text;
using TrimOut.Core;

namespace TrimOut.Papers.Templates;

/// <summary>A template that was read: texts, places, and what stands there only on a condition.</summary>
internal sealed class TemplateBody
{
    private readonly IReadOnlyList<Part> _parts;

    private TemplateBody(IReadOnlyList<Part> parts) => _parts = parts;

    /// <summary>Reads a template.</summary>
    /// <param name="template">The template, whose lines end with a line feed.</param>
    /// <param name="places">The places that there are.</param>
    /// <returns>The template, or what is wrong with it and in which line.</returns>
    public static Result<TemplateBody> Read(string template, IReadOnlyCollection<string> places) => TemplateSigns.Split(template).Then<TemplateBody>(signs =>
    {
        if (signs.FirstOrDefault(s => IsNamed(s) && !places.Contains(s.Text)) is { } unknown)
            return new Refusal($"Line {unknown.Line}: there is no place {{{{{unknown.Text}}}}} in this paper. There are: {string.Join(", ", places)}.");
        LinesAlone.TakeAway(signs);
        var (parts, end) = Parts(signs, 0, null);
        if (parts.Ok && end < signs.Count)
            return new Refusal($"Line {signs[end].Line}: {Named(signs[end])} belongs to nothing that was begun.");
        return parts.Then<TemplateBody>(p => new TemplateBody(p));
    });

    /// <summary>The text with what stands in the places.</summary>
    /// <param name="places">Texts, and what is so or not, by their places.</param>
    public string Fill(IReadOnlyDictionary<string, object> places)
    {
        var to = new StringBuilder();
        Fill(_parts, places, to);
        return to.ToString();
    }

    private static void Fill(IReadOnlyList<Part> parts, IReadOnlyDictionary<string, object> places, StringBuilder to)
    {
        foreach (var part in parts)
        {
            if (part is Part.Words(var words))
                to.Append(words);
            else if (part is Part.Place(var name))
                to.Append(places[name]);
            else if (part is Part.Choice(var asked, var wanted, var then, var otherwise))
                Fill(Has(places[asked]) == wanted ? then : otherwise, places, to);
        }
    }

    private static bool Has(object value) => value switch { bool so => so, string text => text.Length > 0, _ => true };

    private static bool IsNamed(TemplateSign sign) =>
        sign.Sort is TemplateSign.Of.Place or TemplateSign.Of.If or TemplateSign.Of.Unless or TemplateSign.Of.ElseIf;

    private static string Named(TemplateSign sign) =>
        sign.Sort switch { TemplateSign.Of.End => $"{{{{/{sign.Text}}}}}", TemplateSign.Of.ElseIf => "{{else if}}", _ => "{{else}}" };

    /// <summary>What stands from a sign on, up to the one that ends it, and where that is.</summary>
    /// <param name="signs">All signs.</param>
    /// <param name="at">Where it begins.</param>
    /// <param name="within">The condition that it stands in; null for none.</param>
    private static (Result<IReadOnlyList<Part>> Parts, int End) Parts(List<TemplateSign> signs, int at, TemplateSign? within)
    {
        var parts = new List<Part>();
        for (; at < signs.Count; at++)
        {
            switch (signs[at].Sort)
            {
                case TemplateSign.Of.Words:
                    parts.Add(new Part.Words(signs[at].Text));
                    break;
                case TemplateSign.Of.Place:
                    parts.Add(new Part.Place(signs[at].Text));
                    break;
                case TemplateSign.Of.If or TemplateSign.Of.Unless:
                    var (choice, end) = Choice(signs, at, signs[at]);
                    if (!choice.Ok)
                        return (new Refusal(choice.Reason!), at);
                    parts.Add(choice.Value);
                    at = end;
                    break;
                case TemplateSign.Of.Comment:
                    break;
                default:
                    return (parts, at);
            }
        }
        return (within is null ? parts : new Refusal($"Line {within.Line}: what begins with {{{{#{within.EndedBy} {within.Text}}}}} " +
            $"is not ended by {{{{/{within.EndedBy}}}}}."), at);
    }

    /// <summary>What a condition chooses between, and where it ends.</summary>
    /// <param name="signs">All signs.</param>
    /// <param name="at">Where the condition, or the next one of it, is asked.</param>
    /// <param name="first">The sign that the condition began with, which says how it ends.</param>
    private static (Result<Part> Choice, int End) Choice(List<TemplateSign> signs, int at, TemplateSign first)
    {
        var asked = signs[at];
        var (then, end) = Parts(signs, at + 1, first);
        if (!then.Ok)
            return (new Refusal(then.Reason!), end);
        IReadOnlyList<Part> otherwise = [];
        if (signs[end].Sort is TemplateSign.Of.ElseIf)
        {
            var (next, ended) = Choice(signs, end, first);
            return (next.Then<Part>(n => new Part.Choice(asked.Text, asked.Sort is not TemplateSign.Of.Unless, then.Value, [n])), ended);
        }
        if (signs[end].Sort is TemplateSign.Of.Else)
        {
            var (rest, ended) = Parts(signs, end + 1, first);
            if (!rest.Ok)
                return (new Refusal(rest.Reason!), ended);
            (otherwise, end) = (rest.Value, ended);
        }
        if (signs[end].Sort is not TemplateSign.Of.End || signs[end].Text != first.EndedBy)
            return (new Refusal($"Line {signs[end].Line}: {Named(signs[end])} does not end {{{{#{first.EndedBy} {first.Text}}}}} of line {first.Line}."), end);
        return (new Part.Choice(asked.Text, asked.Sort is not TemplateSign.Of.Unless, then.Value, otherwise), end);
    }

    private abstract record Part
    {
        public sealed record Words(string Text) : Part;

        public sealed record Place(string Name) : Part;

        public sealed record Choice(string Name, bool Wanted, IReadOnlyList<Part> Then, IReadOnlyList<Part> Otherwise) : Part;
    }
}
