namespace TrimOut.Papers.Templates;

/// <summary>Takes away the spaces around signs that ask for it, and the lines that hold nothing but a condition or a comment.</summary>
internal static class LinesAlone
{
    /// <summary>Changes the texts around the signs. Before each sign stands a text, which may be empty.</summary>
    public static void TakeAway(List<TemplateSign> signs)
    {
        var typed = signs.Select(s => s.Text).ToList();
        for (var at = 1; at < signs.Count; at += 2)
        {
            var sign = signs[at];
            if (sign.EatsBefore)
                signs[at - 1] = signs[at - 1] with { Text = signs[at - 1].Text.TrimEnd() };
            if (sign.EatsAfter && at + 1 < signs.Count)
                signs[at + 1] = signs[at + 1] with { Text = signs[at + 1].Text.TrimStart() };
            // Whether it is alone goes by what was typed, also where a neighbour has taken something away since.
            if (!sign.LeavesNoLine || !EndsALine(typed[at - 1], first: at == 1) || !BeginsALine(typed.ElementAtOrDefault(at + 1), last: at == signs.Count - 2))
                continue;
            if (!sign.EatsBefore)
                signs[at - 1] = signs[at - 1] with { Text = signs[at - 1].Text.TrimEnd(' ', '\t') };
            if (!sign.EatsAfter && at + 1 < signs.Count)
                signs[at + 1] = signs[at + 1] with { Text = WithoutLine(signs[at + 1].Text) };
        }
    }

    private static bool EndsALine(string before, bool first)
    {
        var line = before.LastIndexOf('\n');
        return (first || line >= 0) && before.AsSpan(line + 1).IsWhiteSpace();
    }

    private static bool BeginsALine(string? after, bool last)
    {
        var rest = after.AsSpan().TrimStart(" \t");
        return after is null || rest.StartsWith("\n") || (last && rest.IsEmpty);
    }

    private static string WithoutLine(string after)
    {
        var rest = after.TrimStart(' ', '\t');
        return rest.StartsWith('\n') ? rest[1..] : rest;
    }
}
