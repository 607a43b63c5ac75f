using System.Text.RegularExpressions;
using QRCoder;
using TrimOut.Papers.Drawings;
using TrimOut.Papers.Labels.Codes;

namespace TrimOut.Papers.Tests.Labels.Codes;

/// <summary>Codes are read back by ZXing, and held field by field to those that QRCoder makes: two implementations that know nothing of ours.</summary>
public partial class QrCodeTests
{
    // The longest texts of each version, by ISO/IEC 18004, table 7, error correction M, bytes.
    private static readonly int[] Longest = [14, 26, 42, 62, 84, 106, 122, 152, 180, 213, 251, 287, 331, 362, 412, 450, 504, 560, 624, 666, 711, 779, 857, 911, 997];

    public static TheoryData<int> Versions => [.. Enumerable.Range(1, Longest.Length)];

    [Theory]
    [MemberData(nameof(Versions))]
    public void EveryVersionTakesAsMuchAsTheStandardSaysAndIsReadBack(int version)
    {
        foreach (var length in new[] { Longest[version - 1], version == 1 ? 1 : Longest[version - 2] + 1 })
        {
            var text = string.Concat(Enumerable.Range(0, length).Select(at => (char)('!' + at * 37 % 90)));
            var code = QrCode.Of(text)!;
            Assert.Equal(17 + 4 * version, code.Side);
            Assert.Equal(text, CodeReader.Read(PathOf(code)));
        }
    }

    [Fact]
    public void MoreThanTheLargestHoldsIsNoCode()
    {
        Assert.NotNull(QrCode.Of(new string('a', 997)));
        Assert.Null(QrCode.Of(new string('a', 998)));
    }

    [Theory]
    [InlineData("é 窓 🪟")]
    [InlineData("חלון")]
    [InlineData("")]
    public void AnyLettersAreReadBack(string text) => Assert.Equal(text, CodeReader.Read(PathOf(QrCode.Of(text)!)));

    [Theory]
    [MemberData(nameof(Versions))]
    public void EveryFieldUnderTheMaskIsAsASecondMakerSetsIt(int version)
    {
        var text = string.Concat(Enumerable.Range(0, Longest[version - 1]).Select(at => (char)('a' + at * 11 % 26)));
        var code = QrCode.Of(text)!;
        using var other = QRCodeGenerator.GenerateQrCode(text, QRCodeGenerator.ECCLevel.M, requestedVersion: version);
        UInt128[] theirs = [.. Enumerable.Range(0, code.Side).Select(row => Enumerable.Range(0, code.Side).Aggregate(UInt128.Zero, (bits, c) => bits | (other.ModuleMatrix[row + 4][c + 4] ? UInt128.One << c : 0)))];
        // Makers weigh masks a little differently: with each one's mask and format bits taken off, all fields must be the same.
        Assert.Equal(Unmasked(theirs), Unmasked(Rows(code)));
    }

    [Fact]
    public void TheMaskWithTheLeastPenaltyIsTakenCountedFieldByField()
    {
        foreach (var text in new[] { "W01;window;P1-W01", "W02A;panel;P1-W02A", new string('a', 100) })
        {
            var code = QrCode.Of(text)!;
            var size = QrSize.OfSide(code.Side);
            var bare = Unmasked(Rows(code));
            UInt128[] columns = [.. Enumerable.Range(0, code.Side).Select(c => bare.Index().Aggregate(UInt128.Zero, (sum, row) => sum | (row.Item >> c & 1) << row.Index))];
            var counted = size.Masks.Select(m => Counted(m.Over(bare))).ToList();
            Assert.Equal(counted, size.Masks.Select(m => m.Penalty(bare, columns)));
            Assert.Equal(counted.IndexOf(counted.Min()), MaskOf(Rows(code)));
        }
    }

    /// <summary>ISO/IEC 18004, 7.8.3, counted the plain way.</summary>
    private static int Counted(UInt128[] fields)
    {
        var side = fields.Length;
        bool At(int row, int column) => row >= 0 && column >= 0 && row < side && column < side && (fields[row] >> column & 1) != 0;
        var penalty = 0;
        foreach (var along in new Func<int, int, bool>[] { At, (a, b) => At(b, a) })
        {
            for (var line = 0; line < side; line++)
            {
                for (var from = 0; from < side;)
                {
                    var to = from;
                    while (to < side && along(line, to) == along(line, from))
                        to++;
                    penalty += to - from >= 5 ? to - from - 2 : 0;
                    from = to;
                }
                for (var at = 0; at + 7 <= side; at++)
                {
                    var finder = Enumerable.Range(0, 7).All(i => along(line, at + i) == i is 0 or 2 or 3 or 4 or 6);
                    var light = Enumerable.Range(1, 4).All(i => !along(line, at - i)) || Enumerable.Range(7, 4).All(i => !along(line, at + i));
                    penalty += finder && light ? 40 : 0;
                }
            }
        }
        for (var row = 0; row + 1 < side; row++)
        {
            for (var column = 0; column + 1 < side; column++)
                penalty += At(row, column) == At(row, column + 1) && At(row, column) == At(row + 1, column) && At(row, column) == At(row + 1, column + 1) ? 3 : 0;
        }
        var dark = fields.Sum(f => (int)UInt128.PopCount(f)) * 100.0 / (side * side);
        return penalty + 10 * (int)Math.Max(0, Math.Ceiling(Math.Abs(dark - 50) / 5) - 1);
    }

    private static UInt128[] Rows(QrCode code) => [.. Enumerable.Range(0, code.Side).Select(code.Row)];

    private static UInt128[] Unmasked(UInt128[] rows) => QrSize.OfSide(rows.Length).Masks[MaskOf(rows)].Over(rows);

    /// <summary>The mask that the format bits name: bits 12 to 10, from the third field of the ninth row, turned over by 101.</summary>
    private static int MaskOf(UInt128[] rows)
    {
        var bits = (int)(rows[8] >> 2 & 7);
        return ((bits & 1) << 2 | bits & 2 | bits >> 2) ^ 0b101;
    }

    private static string PathOf(QrCode code) => Path().Match(new Svg(1, 1).Fields(0, 0, 1, code).Render("x")).Groups["d"].Value;

    [GeneratedRegex(" d=\"(?<d>[^\"]*)\"")]
    private static partial Regex Path();
}
