using System.Buffers;
using System.Text;

namespace TrimOut.Papers.Drawings;

/// <summary>Numbers and lettering of a drawing, written without a piece of text in between.</summary>
internal static class SvgText
{
    private static readonly SearchValues<char> Plain = SearchValues.Create(
        "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789 !#$%'()*+,-./:;=?@[\\]^_`{|}~–×·…ÄÖÜäöüß");

    /// <summary>A number with a point and at most two decimals, halves away from nothing.</summary>
    public static StringBuilder Number(this StringBuilder to, double number)
    {
        var hundredths = (long)Math.Round(number * 100, MidpointRounding.AwayFromZero);
        if (hundredths < 0)
        {
            to.Append('-');
            hundredths = -hundredths;
        }
        var (whole, rest) = Math.DivRem(hundredths, 100);
        to.Whole(whole);
        if (rest > 0)
        {
            to.Append('.').Append((char)('0' + rest / 10));
            if (rest % 10 > 0)
                to.Append((char)('0' + rest % 10));
        }
        return to;
    }

    /// <summary>What a shape stands for, as an attribute; nothing where it stands for nothing.</summary>
    public static StringBuilder Part(this StringBuilder to, string? part) => part is null ? to : to.Append(" data-part=\"").Append(part).Append('"');

    /// <summary>A whole number from 0 on.</summary>
    public static StringBuilder Whole(this StringBuilder to, long number)
    {
        if (number > 9)
            to.Whole(number / 10);
        return to.Append((char)('0' + number % 10));
    }

    /// <summary>Typed text, so that nothing in it can act as markup.</summary>
    public static StringBuilder Xml(this StringBuilder to, string text)
    {
        if (text.AsSpan().IndexOfAnyExcept(Plain) < 0)
            return to.Append(text);
        foreach (var rune in text.EnumerateRunes())
        {
            switch (rune.Value)
            {
                case '<': to.Append("&lt;"); break;
                case '>': to.Append("&gt;"); break;
                case '&': to.Append("&amp;"); break;
                case '"': to.Append("&quot;"); break;
                case 0xFFFE or 0xFFFF: to.Append('\uFFFD'); break;
                case var _ when Rune.IsControl(rune): to.Append(' '); break;
                default: to.Append(rune); break;
            }
        }
        return to;
    }
}
