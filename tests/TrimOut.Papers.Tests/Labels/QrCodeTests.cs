using System.Text.RegularExpressions;
using TrimOut.Papers.Drawings;
using TrimOut.Papers.Labels;
using ZXing;
using ZXing.QrCode.Internal;

namespace TrimOut.Papers.Tests.Labels;

/// <summary>What is drawn of a code is read back by ZXing.</summary>
public partial class QrCodeTests
{
    [Theory]
    [InlineData("W01;window;P1-W01", 21 + 4)]
    [InlineData("é 窓 🪟", 21)]
    [InlineData("חלון", 21)]
    public void AnyLettersAreReadBackFromTheSmallestCodeThatHoldsThem(string text, int side)
    {
        var code = QrCode.Of(text)!;
        Assert.Equal(side, code.Side);
        Assert.Equal(text, CodeReader.Read(PathOf(code)));
    }

    // ISO/IEC 18004, table 7: version 40 with error correction M holds 2,331 bytes.
    [Fact]
    public void MoreThanTheLargestHoldsIsNoCode()
    {
        Assert.Equal(177, QrCode.Of(new string('a', 2331))!.Side);
        Assert.Null(QrCode.Of(new string('a', 2332)));
    }

    // Each size has its own division into blocks, alignment patterns and, from the seventh on, its version written in it.
    [Fact]
    public void EverySizeIsFieldForFieldWhatAnotherProgramMakesWithTheSameMask()
    {
        var sides = new HashSet<int>();
        for (var length = 1; length <= 2331; length += length < 200 ? 7 : 29)
        {
            var text = string.Concat(Enumerable.Range(0, length).Select(at => (char)('a' + (7 * at + length) % 26)));
            var code = QrCode.Of(text)!;
            Assert.Contains(Fields(code), Enumerable.Range(0, 8).Select(mask => Fields(text, mask)));
            sides.Add(code.Side);
        }
        Assert.Equal(40, sides.Count);
    }

    private static string Fields(QrCode code) => string.Concat(Enumerable.Range(0, code.Side * code.Side).Select(at => code.Dark(at / code.Side, at % code.Side)
        ? '1'
        : '0'));

    private static string Fields(string text, int mask)
    {
        var matrix = Encoder.encode(text, ErrorCorrectionLevel.M, new Dictionary<EncodeHintType, object>
        {
            [EncodeHintType.CHARACTER_SET] = "UTF-8",
            [EncodeHintType.DISABLE_ECI] = true,
            [EncodeHintType.QR_MASK_PATTERN] = mask,
        }).Matrix;
        return string.Concat(Enumerable.Range(0, matrix.Width * matrix.Height).Select(at => matrix[at % matrix.Width, at / matrix.Width]));
    }

    private static string PathOf(QrCode code) => Path().Match(new Svg(1, 1).Fields(0, 0, 1, code).Render("x")).Groups["d"].Value;

    [GeneratedRegex(" d=\"(?<d>[^\"]*)\"")]
    private static partial Regex Path();
}
