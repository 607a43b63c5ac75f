using TrimOut.HouseFile.Files;

namespace TrimOut.HouseFile.Tests.Files;

/// <summary>Names that are none on Windows. Source: Microsoft Learn, "Naming Files, Paths, and Namespaces".</summary>
public sealed class NameAnywhereTests
{
    [Theory]
    [InlineData("/x/con.trimout", "CON")]
    [InlineData("Prn.trimout", "PRN")]
    [InlineData("NUL.2026.trimout", "NUL")]
    [InlineData("com9 .trimout", "COM9")]
    [InlineData("lpt³.trimout", "LPT³")]
    [InlineData("conin$.trimout", "CONIN$")]
    public void ADevicesNameIsRefusedWhateverStandsBehindIt(string path, string device)
    {
        Assert.Contains($"Windows keeps {device} for a device", NameAnywhere.WhyNot(path));
        Assert.Null(NameAnywhere.WhyNot(NameAnywhere.Freed(Path.GetFileName(path))));
    }

    [Theory]
    [InlineData('<')]
    [InlineData('>')]
    [InlineData('"')]
    [InlineData('|')]
    [InlineData('?')]
    [InlineData('*')]
    public void ASignThatMeansSomethingElseIsNamed(char sign) =>
        Assert.Contains($"Windows takes no {sign} in a file's name", NameAnywhere.WhyNot($"/x/elm{sign}.trimout"));

    [Fact]
    public void AControlCharacterIsNeverSentToTheTerminal()
    {
        var why = NameAnywhere.WhyNot("elm\u001b[2J.trimout");
        Assert.Contains("no control character", why);
        Assert.DoesNotContain("\u001b", why);
    }

    [Theory]
    [InlineData("elm.trimout")]
    [InlineData("/con/aux/elm.trimout")]
    [InlineData("console.trimout")]
    [InlineData("com10.trimout")]
    [InlineData("my con.trimout")]
    [InlineData("Müller 4. OG.trimout")]
    [InlineData("elm .trimout")]
    public void EveryOtherNameIsOne(string path) => Assert.Null(NameAnywhere.WhyNot(path));
}
