using System.Text.RegularExpressions;
using TrimOut.Papers.Drawings;
using TrimOut.Papers.Labels;

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

    private static string PathOf(QrCode code) => Path().Match(new Svg(1, 1).Fields(0, 0, 1, code).Render("x")).Groups["d"].Value;

    [GeneratedRegex(" d=\"(?<d>[^\"]*)\"")]
    private static partial Regex Path();
}
