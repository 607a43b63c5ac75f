using AngleSharp.Html.Parser;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Units;
using TrimOut.Papers.Templates;

namespace TrimOut.Papers.Tests.Drawings;

/// <summary>Whoever can't see a drawing is told what matters of it: sizes, side, mount, outputs, what faces where.</summary>
public class AltTextTests
{
    public static TheoryData<string, string> SamplesAndLanguages
    {
        get
        {
            var all = new TheoryData<string, string>();
            foreach (var sample in SampleJobs.Names)
            {
                foreach (var language in (string[])["en", "de", "es"])
                    all.Add(sample, language);
            }
            return all;
        }
    }

    [Theory]
    [MemberData(nameof(SamplesAndLanguages))]
    public void ADrawingOfAWindowSaysItsMountItsSizeAndOnWhichSideEachLeadIs(string sample, string language)
    {
        var data = SampleJobs.Data(sample);
        var titles = Titles("hang-sheet", data, language);
        foreach (var window in data.House.Windows.Where(w => !w.LeftOut))
        {
            var said = Assert.Single(titles, t => t.StartsWith(Opening(language, window), StringComparison.Ordinal));
            if (window.Mount is { } mount)
                Assert.Contains(InWords(language, mount), said, StringComparison.Ordinal);
            foreach (var length in new[] { window.KnownWidth, window.KnownHeight }.OfType<Length>())
                Assert.Contains(Shown(length, data.House, language), said, StringComparison.Ordinal);
            foreach (var unit in window.Units.Where(u => u.LeadSide is not null))
                Assert.Matches($"{unit.Tag}: [^;]*{InWords(language, unit.LeadSide!.Value)}", said);
            if (window.Units.Length > 1)
                Assert.All(window.Units.Where(u => u.OwnWidth is not null), u => Assert.Contains(
                    Shown(u.OwnWidth!.Value, data.House, language), said, StringComparison.Ordinal));
        }
    }

    [Theory]
    [MemberData(nameof(SamplesAndLanguages))]
    public void ADrawingOfAPanelNamesEachUnitByItsOutput(string sample, string language)
    {
        var data = SampleJobs.Data(sample);
        var titles = Titles("panel-schedule", data, language);
        foreach (var run in data.House.Runs.Where(r => r is { Panel: not null, Output: not null }))
            Assert.Contains(titles, t => t.Contains($" {run.Panel!.Name}: ", StringComparison.Ordinal)
                && t.Contains($" {run.Output} {run.Name}", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("en", "Panel B: 5\u00A0? outputs, all free")]
    [InlineData("de", "Netzteil B: 5\u00A0? Ausgänge, alle frei")]
    [InlineData("es", "Panel B: 5\u00A0? salidas, todas libres")]
    public void ADrawingOfAnEmptyPanelSaysThatAllItsOutputsAreFree(string language, string said) =>
        Assert.Contains(said, Titles("panel-schedule", SampleJobs.Data("ridge-house"), language));

    /// <summary>12 mm and 45 mm were typed of W08 in this house of inches; 1 in is 25.4 mm, and a tape has sixteenths.</summary>
    [Fact]
    public void WhatLiesOutsideAnOpeningIsToldInTheUnitsOfTheHouse() =>
        Assert.Contains("outside: 1/2\" past the opening on each side, 1 3/4\" above it",
            Assert.Single(Titles("hang-sheet", SampleJobs.Data("ridge-house"), "en"), t => t.StartsWith("Window W08", StringComparison.Ordinal)),
            StringComparison.Ordinal);

    [Fact]
    public void APlanSaysWhatEachWindowFacesAndASectionHowFarItIsSetBack()
    {
        var data = FinishedHouse.Data();
        Assert.Contains(Titles("binder", data, "en"), t => t.StartsWith("Rooms of floor Main: Kitchen (W01 S)", StringComparison.Ordinal));
        var house = FinishedHouse.Build().SayOf("Roller", CoveringKindFacts.Tube, "1 1/2").SayOf("Roller", CoveringKindFacts.FabricThickness, "0.02")
            .SayOf("Roller", CoveringKindFacts.Setback, "1/4");
        Assert.Contains(Titles("hang-sheet", FinishedHouse.Data(house.Scribe.Log), "en"),
            t => t.StartsWith("Section of W01, room on the left, glass on the right: tube 1 1/2\"\u00A0?, ", StringComparison.Ordinal)
                && t.Contains("set back 1/4\"\u00A0?, ", StringComparison.Ordinal));
    }

    private static List<string> Titles(string paper, PaperData data, string language)
    {
        var found = PaperList.Find(paper)!;
        var written = language == "en" ? found.Write(data) : found.Write(data, PaperTemplate.In(found, language).Value);
        return [.. new HtmlParser().ParseDocument(written.ToHtml()).QuerySelectorAll("svg > title").Select(t => t.TextContent)];
    }

    private static string Opening(string language, Window window) => language switch
    {
        "de" => $"Fenster {window.Tag} von innen",
        "es" => $"Ventana {window.Tag} vista desde adentro",
        _ => $"Window {window.Tag} from inside",
    };

    private static string InWords(string language, Mount mount) => (language, mount) switch
    {
        ("de", Mount.Inside) => "innen",
        ("de", _) => "außen",
        ("es", Mount.Inside) => "montaje por dentro",
        ("es", _) => "montaje por fuera",
        (_, Mount.Inside) => "mount inside",
        _ => "mount outside",
    };

    private static string InWords(string language, Side side) => (language, side) switch
    {
        ("de", Side.Left) => "links",
        ("de", _) => "rechts",
        ("es", Side.Left) => "izquierda",
        ("es", _) => "derecha",
        (_, Side.Left) => "left",
        _ => "right",
    };

    private static string Shown(Length length, House house, string language) =>
        length.ShowRounded(house.DisplayUnits) is var shown && language == "de" ? shown.Replace('.', ',') : shown;
}
