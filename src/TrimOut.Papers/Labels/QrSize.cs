namespace TrimOut.Papers.Labels;

/// <summary>How large a QR code of one version is, and how its words are divided. ISO/IEC 18004, tables 1 and 9, for error correction M.</summary>
/// <param name="Version">1 to 40.</param>
internal readonly record struct QrSize(int Version)
{
    private const int Largest = 40;

    private static readonly byte[] CheckWords =
        [10, 16, 26, 18, 24, 16, 18, 22, 22, 26, 30, 22, 22, 24, 24, 28, 28, 26, 26, 26, 26, 28, 28, 28, 28, 28, 28, 28, 28, 28, 28, 28, 28, 28, 28, 28, 28,
            28, 28, 28];

    private static readonly byte[] BlocksOfVersion =
        [1, 1, 1, 2, 2, 4, 4, 4, 5, 5, 5, 8, 9, 9, 10, 10, 11, 13, 14, 16, 17, 17, 18, 20, 21, 23, 25, 26, 28, 29, 31, 33, 35, 37, 38, 40, 43, 45, 47, 49];

    /// <summary>Fields a side.</summary>
    public int Side => 17 + 4 * Version;

    /// <summary>Blocks, each of which has check words of its own.</summary>
    public int Blocks => BlocksOfVersion[Version - 1];

    /// <summary>Check words of each block.</summary>
    public int CheckWordsOfBlock => CheckWords[Version - 1];

    /// <summary>Words of 8 bits in all: what the fixed patterns leave.</summary>
    public int Words
    {
        get
        {
            var fields = (16 * Version + 128) * Version + 64;
            if (Version > 1)
            {
                var marks = Version / 7 + 2;
                fields -= (25 * marks - 10) * marks - 55;
            }
            return (Version < 7 ? fields : fields - 36) / 8;
        }
    }

    /// <summary>Words that hold what is written.</summary>
    public int DataWords => Words - Blocks * CheckWordsOfBlock;

    /// <summary>Bits that say how many bytes are written.</summary>
    public int LengthBits => Version < 10 ? 8 : 16;

    /// <summary>The middles of the alignment patterns, in rows as in columns; none in the smallest. ISO/IEC 18004, annex E.</summary>
    public int[] Alignments
    {
        get
        {
            if (Version == 1)
                return [];
            var marks = Version / 7 + 2;
            var step = (Version * 8 + marks * 3 + 5) / (marks * 4 - 4) * 2;
            var at = new int[marks];
            at[0] = 6;
            for (var mark = 1; mark < marks; mark++)
                at[mark] = Side - 7 - (marks - 1 - mark) * step;
            return at;
        }
    }

    /// <summary>The smallest that holds so many bytes; null where none does.</summary>
    public static QrSize? Holding(int bytes)
    {
        for (var version = 1; version <= Largest; version++)
        {
            var size = new QrSize(version);
            if (4 + size.LengthBits + 8 * bytes <= 8 * size.DataWords)
                return size;
        }
        return null;
    }
}
