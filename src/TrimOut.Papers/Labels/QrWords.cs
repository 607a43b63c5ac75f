namespace TrimOut.Papers.Labels;

/// <summary>The words of a QR code: what is written, in byte mode, with the check words of Reed and Solomon. ISO/IEC 18004, 7.4 to 7.6.</summary>
internal static class QrWords
{
    private const int ByteMode = 0b0100;
    private const int Field = 0x11D;

    private static readonly byte[] Power = new byte[510];
    private static readonly byte[] Logarithm = new byte[256];

    static QrWords()
    {
        for (var (exponent, power) = (0, 1); exponent < 255; exponent++)
        {
            Power[exponent] = Power[exponent + 255] = (byte)power;
            Logarithm[power] = (byte)exponent;
            power = power < 128 ? 2 * power : 2 * power ^ Field;
        }
    }

    /// <summary>The words in the order in which they are placed: those of all blocks in turns, then their check words.</summary>
    public static byte[] Of(byte[] text, QrSize size)
    {
        var (data, words) = (Data(text, size), new byte[size.Words]);
        var (blocks, checks, divisor) = (size.Blocks, size.CheckWordsOfBlock, Divisor(size.CheckWordsOfBlock));
        var (least, shorter) = (data.Length / blocks, blocks - data.Length % blocks);
        for (var (block, from) = (0, 0); block < blocks; block++)
        {
            var part = data.AsSpan(from, block < shorter ? least : least + 1);
            // The longer blocks come last, so in the turn after the shorter ones have ended only they have a word.
            for (var at = 0; at < part.Length; at++)
                words[at * blocks + (at < least ? block : block - shorter)] = part[at];
            var rest = Rest(part, divisor);
            for (var at = 0; at < checks; at++)
                words[data.Length + at * blocks + block] = rest[at];
            from += part.Length;
        }
        return words;
    }

    private static byte[] Data(byte[] text, QrSize size)
    {
        var data = new byte[size.DataWords];
        var bit = 0;
        Put(ByteMode, 4);
        Put(text.Length, size.LengthBits);
        foreach (var one in text)
            Put(one, 8);
        // Four bits of nothing end it, as far as there is room; then pad words fill it in turns.
        for (var (word, pad) = ((Math.Min(bit + 4, 8 * data.Length) + 7) / 8, 0xEC); word < data.Length; word++, pad ^= 0xEC ^ 0x11)
            data[word] = (byte)pad;
        return data;

        void Put(int value, int bits)
        {
            for (var at = bits - 1; at >= 0; at--, bit++)
                data[bit / 8] |= (byte)((value >> at & 1) << 7 - bit % 8);
        }
    }

    private static byte[] Divisor(int degree)
    {
        var divisor = new byte[degree];
        divisor[^1] = 1;
        for (var root = 0; root < degree; root++)
        {
            for (var at = 0; at < degree; at++)
                divisor[at] = (byte)(Times(divisor[at], Power[root]) ^ (at + 1 < degree ? divisor[at + 1] : 0));
        }
        return divisor;
    }

    private static byte[] Rest(ReadOnlySpan<byte> part, byte[] divisor)
    {
        var rest = new byte[divisor.Length];
        foreach (var word in part)
        {
            var factor = (byte)(word ^ rest[0]);
            for (var at = 0; at < rest.Length; at++)
                rest[at] = (byte)((at + 1 < rest.Length ? rest[at + 1] : 0) ^ Times(divisor[at], factor));
        }
        return rest;
    }

    private static byte Times(byte a, byte b) => a == 0 || b == 0 ? (byte)0 : Power[Logarithm[a] + Logarithm[b]];
}
