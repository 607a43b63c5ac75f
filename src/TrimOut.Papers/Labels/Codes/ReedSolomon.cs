namespace TrimOut.Papers.Labels.Codes;

/// <summary>The check bytes of a QR code: the remainder of a division in the field of 256 elements over x^8 + x^4 + x^3 + x^2 + 1 (ISO/IEC 18004, 7.5).</summary>
internal static class ReedSolomon
{
    private const int Field = 0x11D;

    private static readonly byte[] Powers = new byte[510];
    private static readonly byte[] Logarithms = new byte[256];
    private static readonly byte[]?[] Divisors = new byte[31][];

    static ReedSolomon()
    {
        var power = 1;
        for (var exponent = 0; exponent < 255; exponent++)
        {
            Powers[exponent] = Powers[exponent + 255] = (byte)power;
            Logarithms[power] = (byte)exponent;
            power <<= 1;
            if (power > 255)
                power ^= Field;
        }
    }

    /// <summary>Works out the check bytes of one block.</summary>
    /// <param name="data">The block.</param>
    /// <param name="check">Where they go: at most 30.</param>
    public static void Check(ReadOnlySpan<byte> data, Span<byte> check)
    {
        var divisor = Divisors[check.Length] ??= Divisor(check.Length);
        check.Clear();
        foreach (var value in data)
        {
            var factor = value ^ check[0];
            check[1..].CopyTo(check);
            check[^1] = 0;
            if (factor == 0)
                continue;
            var exponent = Logarithms[factor];
            for (var at = 0; at < check.Length; at++)
                check[at] ^= Powers[divisor[at] + exponent];
        }
    }

    /// <summary>The product of (x - 2^0) to (x - 2^(count - 1)), as logarithms, highest power first, without the leading 1.</summary>
    private static byte[] Divisor(int count)
    {
        var product = new byte[count];
        product[^1] = 1;
        for (var root = 0; root < count; root++)
        {
            for (var at = 0; at < count; at++)
            {
                var times = product[at] == 0 ? 0 : Powers[Logarithms[product[at]] + root];
                product[at] = (byte)(times ^ (at + 1 < count ? product[at + 1] : 0));
            }
        }
        return [.. product.Select(p => Logarithms[p])];
    }
}
