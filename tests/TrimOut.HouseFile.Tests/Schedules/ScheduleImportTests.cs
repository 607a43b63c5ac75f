using System.Collections.Immutable;
using System.Text;
using TrimOut.Core;
using TrimOut.Core.Facts;
using TrimOut.Core.Units;
using TrimOut.HouseFile.Schedules;
using TrimOut.Testing;

namespace TrimOut.HouseFile.Tests.Schedules;

public class ScheduleImportTests
{
    private readonly TestJob _job = new();

    private Result<SchedulePlan> Plan(string csv, ScheduleOptions? options = null) =>
        ScheduleImport.Plan(_job.Scribe.Log, Encoding.UTF8.GetBytes(csv), "windows.csv", options ?? ScheduleOptions.ByHeaders);

    private static string Problems(SchedulePlan plan) =>
        string.Join("\n", plan.Problems.Select(p => $"{p.Line} {p.Column}: {p.Reason}{(p.RowLost ? " (row)" : "")}"));

    [Fact]
    public void SidesAndMountsInGermanAndSpanishAreRead()
    {
        var plan = Plan("tag,width,height,lead side,mount\nW01,36,60,links,innen\nW02,36,60,derecha,afuera\nW03,36,60,Re.,Außen\n").Value;
        Assert.Empty(plan.Problems);
        Assert.Contains("Lead side \"links\" read as left", plan.Understood);
        _job.Do(plan.Draft);
        Assert.Equal([(Side.Left, Mount.Inside), (Side.Right, Mount.Outside), (Side.Right, Mount.Outside)],
            _job.House.Windows.Select(w => (w.Units[0].LeadSide!.Value, w.Mount!.Value)));
    }

    /// <summary>Nothing could be read of the sizes, and a script is not told that all went well.</summary>
    [Theory]
    [InlineData("tag,RO W (in),RO H (in)\nW01,36,60\n", 0, "36\"")]
    [InlineData("tag,R.O. W (in),R.O. H (in)\nW01,36,60\n", 0, "36\"")]
    [InlineData("tag,room,Frame A (in),Frame B (in)\nW01,Den,36,60\n", 2, "")]
    [InlineData("tag,width,height,Frame depth (in)\nW01,36,60,5\n", 0, "36\"")]
    public void AColumnOfLengthsThatIsTakenForNothingIsAProblemWhileThereIsNoSize(string file, int problems, string width)
    {
        var plan = Plan(file).Value;
        Assert.Equal((problems, width), (plan.Problems.Length, plan.Windows.Single().Width));
    }

    [Fact]
    public void AnOfficeScheduleComesInWhole()
    {
        var plan = Plan(""""
            WINDOW SCHEDULE,,,,,
            Mark,Location,Width,Height,Sill Ht.,Remarks
            W01,Kitchen,"3'-9 1/2""","4'-0""","36""","over sink, ""garden"" side"
            W02,Kitchen,45 1/2",48",,

            ,,,,,
            W03,Stair landing,1156 mm,60,,

            TOTALS,,3,,,
            """".Insert(0, "\ufeff")).Value;
        Assert.Empty(plan.Problems);
        _job.Do(plan.Draft);
        Assert.Equal(["Kitchen", "Stair landing"], _job.House.Rooms.Select(r => r.Name));
        Assert.Equal(Length.FromInches(45, 1, 2), _job.House.FindTag("W01")!.RoughWidth);
        Assert.Equal(Length.FromInches(45, 1, 2), _job.House.FindTag("W02")!.RoughWidth);
        Assert.Equal(Length.FromMillimetres(1156), _job.House.FindTag("W03")!.RoughWidth);
        Assert.Equal("over sink, \"garden\" side. Sill 36\"", _job.House.FindTag("W01")!.Item.Get(WindowFacts.Note));
        Assert.Equal("Stair landing", _job.House.FindTag("W03")!.Room!.Name);
        Assert.NotNull(_job.Unit("W02").Run);
        Assert.Contains(plan.Understood, u => u.Contains("totals"));
    }

    [Fact]
    public void RoomsOfOneNameOnTwoFloorsStayTwoRooms()
    {
        var plan = Plan("tag,room,floor,width\nW01,Kitchen,Main,30\nW02,Kitchen,Upper,30\nW03,kitchen,main,30\nW04,Kitchen,,30\n").Value;
        Assert.Equal("5 room: there is more than one Kitchen, and no floor says which: Kitchen/Main, Kitchen/Upper. It is left without a room.",
            Problems(plan));
        _job.Do(plan.Draft);
        Assert.Equal(["Kitchen/Main", "Kitchen/Upper"], _job.House.Rooms.Select(r => r.FullName));
        Assert.Equal(["W01", "W03"], _job.House.Rooms[0].Windows.Select(w => w.Tag));
    }

    [Fact]
    public void TheWholeImportIsOneChangeAndOneUndo()
    {
        _job.Do(Plan("tag,room,width\nW01,Bath,30\nW02,Hall,30\n").Value.Draft);
        Assert.Equal(2, _job.House.Windows.Length);
        Assert.True(_job.Scribe.Undo().Ok);
        Assert.Empty(_job.House.Windows);
        Assert.Empty(_job.House.Rooms);
    }

    [Fact]
    public void WhatCannotBeReadIsListedByLineAndColumnAndTheRestIsNotLost()
    {
        _job.Window("W09");
        var plan = Plan("""
            Mark,Room,Width,Height,Qty
            W01,Den,45 1/3,60,1
            W02,Den,40 ft,-5,
            ,Den,36,60,
            w01,Den,36,60,
            W09,Den,36,60,
            W03,Den,36,sixty,some
            """).Value;
        Assert.Equal(["W01", "W02", "W03"], plan.Windows.Select(w => w.Tag));
        Assert.Equal("""
            2 Width: 1/3 is on no tape. A tape has halves, quarters, eighths, sixteenths, thirty-seconds and sixty-fourths.
            3 Width: 480" is too long: the most that makes sense here is 360". Did you mean 40"?
            3 Height: A length can't be negative.
            4 Mark: there is no tag. (row)
            5 Mark: tag w01 is on line 2 already. Every window has its own tag. (row)
            6 Mark: tag W09 is in the house already, in Kitchen. (row)
            7 Qty: "some" is no number of windows from 1 to 99.
            7 Height: "sixty" is no length. Type something like 45 1/2, 3'-9 1/2" or 1156 mm.
            """, Problems(plan));
        Assert.Equal(("", "60\""), (plan.Windows[0].Width, plan.Windows[0].Height));
    }

    [Fact]
    public void ColumnsThatTheUserNamesAreTaken()
    {
        var named = ImmutableDictionary<ScheduleField, string>.Empty.Add(ScheduleField.Tag, "Type Id").Add(ScheduleField.Width, "B");
        var plan = Plan("Type Id,Width,B\nA,1,40\n", ScheduleOptions.ByHeaders with { Columns = named }).Value;
        Assert.Equal("40\"", plan.Windows.Single().Width);
        Assert.Equal("Width", Assert.Single(plan.Unused));
    }

    [Fact]
    public void AColumnThatIsNotThereIsNamedWithThoseThatAre()
    {
        var columns = ImmutableDictionary<ScheduleField, string>.Empty.Add(ScheduleField.Tag, "Nummer");
        var refused = Plan("Mark,Width\nA,40\n", ScheduleOptions.ByHeaders with { Columns = columns });
        Assert.Equal("No column is headed \"Nummer\" (asked for as tag). The columns are: Mark, Width. Nothing was imported.", refused.Reason);
    }

    [Theory]
    [InlineData("color,price\nred,3\n", "No row names a column with the windows' tags")]
    [InlineData("", "The file is empty")]
    [InlineData("\n , \n", "The file is empty")]
    [InlineData("tag,width\n\"W01,30\nW02,30\n", "Line 2: a quote is opened and not closed")]
    [InlineData("tag,width\nW01,\"30\" x\nW02,30\n", "Line 2: a quote is opened and not closed")]
    [InlineData("tag,note,width\nW00,,3\nW01,45 1/2\",\"abc\nW02,30\n", "Line 3: a quote is opened and not closed")]
    [InlineData("\0\u0001\u0002", "is no text file")]
    public void AFileThatCannotBeReadSaysWhy(string csv, string why) => Assert.Contains(why, Plan(csv).Reason);

    [Fact]
    public void TheUnitInAHeaderGoesForItsBareNumbers()
    {
        var plan = Plan("Tag;Overall Width (mm);Height_in\nA;914.999999999999;60\n").Value;
        Assert.Equal(("915 mm", "60\""), (plan.Windows[0].Width, plan.Windows[0].Height));
    }

    [Fact]
    public void AScheduleThatAModellersExportGives()
    {
        var plan = Plan("""
            GlobalId,Tag,Name,Storey,StoreyElevation,OverallHeight_raw,OverallWidth_raw,OverallWidth_mm,OverallHeight_mm
            0ZB,359493,M_Fixed:0915 x 1830mm:359493,Level 1,0.,1830.,914.999999999999,915.0,1830.0
            0ZC,360741,M_Fixed:0915 x 1830mm:360741,Level 2,4000.,1830.,914.999999999999,915.0,1830.0
            """).Value;
        Assert.Equal("Level 1, Level 2", string.Join(", ", plan.NewRooms));
        Assert.All(plan.Windows, w => Assert.Equal(("915 mm", "1830 mm"), (w.Width, w.Height)));
        Assert.Contains("OverallWidth_raw", plan.Unused);
    }

    [Fact]
    public void ARoomThatAMacSpellsWithItsAccentsApartIsOneRoom() =>
        Assert.Equal("Küche", string.Join(", ", Plan("Tag,Room,Size\nA,Küche,4050\nB,Ku\u0308che,2668\n").Value.NewRooms));

    [Fact]
    public void SeveralWindowsOfOneMarkGetTagsOfTheirOwn() =>
        Assert.Equal(["A-1", "A-2", "A-3", "B"], Plan("mark,qty,size\nA,3,4050\nB,1,2668\n").Value.Windows.Select(w => w.Tag));

    [Fact]
    public void AUtf16ExportAndAnOldWesternOneAreRead()
    {
        var utf16 = Encoding.Unicode.GetPreamble().Concat(Encoding.Unicode.GetBytes("tag\troom\nW1\tCafé\n")).ToArray();
        var western = Encoding.Latin1.GetBytes("tag,room\nW1,Café\n");
        foreach (var file in new[] { utf16, western })
            Assert.Equal("Café", ScheduleImport.Plan(_job.Scribe.Log, file, "x.csv", ScheduleOptions.ByHeaders).Value.Windows.Single().Room);
    }

    private Result<SchedulePlan> PlanOf(params byte[][] parts) =>
        ScheduleImport.Plan(_job.Scribe.Log, [.. parts.SelectMany(p => p)], "windows.csv", ScheduleOptions.ByHeaders);

    [Theory]
    [InlineData("2'000")]
    [InlineData("1'200")]
    [InlineData("2\u2019000")]
    [InlineData("2'000 mm")]
    public void AThousandsMarkIsListedAndNotTakenForFeet(string cell)
    {
        // Swiss usage writes 2'000 for two thousand (common practice); with a foot mark the same signs are 2'-0".
        var plan = Plan($"tag,width (mm),height (mm)\nW01,{cell},900\n").Value;
        Assert.Contains("can be read two ways", Problems(plan));
        Assert.Equal("", Assert.Single(plan.Windows).Width);
    }

    [Fact]
    public void FeetWithoutInchesAndInchesBehindThemAreReadAsBefore()
    {
        var plan = Plan("tag,width,height\nW01,2',3'-0\"\nW02,2'0,3' 10\n").Value;
        Assert.Empty(plan.Problems);
        Assert.All(plan.Windows, w => Assert.NotEqual("", w.Width + w.Height));
    }

    [Theory]
    [InlineData("DOS 850", new byte[] { (byte)'K', 0x81, (byte)'c', (byte)'h', (byte)'e' })]
    [InlineData("DOS 850", new byte[] { (byte)'S', (byte)'p', 0x84, (byte)'t' })]
    [InlineData("DOS 437", new byte[] { (byte)'C', (byte)'a', (byte)'f', 0x82 })]
    [InlineData("DOS 850", new byte[] { (byte)'B', (byte)'a', 0xa4, (byte)'o' })]
    public void ADosCodePageIsRefusedAtItsLineWithTheAdvice(string name, byte[] room)
    {
        var refused = PlanOf("tag,room,width\nW01,Den,30\nW02,"u8.ToArray(), room, ",30\n"u8.ToArray());
        Assert.False(refused.Ok, name);
        Assert.StartsWith("Line 3 ", refused.Reason, StringComparison.Ordinal);
        Assert.Contains("Save the schedule as UTF-8", refused.Reason);
    }

    [Fact]
    public void TwoEncodingsInOneFileAreRefused()
    {
        var refused = PlanOf("tag,room,width\nW01,K\u00fcche,30\nW02,B"u8.ToArray(), [0xe4], "d,30\n"u8.ToArray());
        Assert.StartsWith("Line 2 is UTF-8, and others are not", refused.Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void WesternEuropeanWithItsQuotesAndDashesIsReadAsWindowsWritesIt()
    {
        // Windows-1252: 0x93 and 0x94 are curly quotes, 0x92 an apostrophe, 0x96 a dash, 0xFC a u with a diaeresis.
        var plan = PlanOf("tag,room,note,width\nW01,K"u8.ToArray(), [0xfc], "che,"u8.ToArray(), [0x93], "Bo"u8.ToArray(), [0x92], "s"u8.ToArray(), [0x94],
            " "u8.ToArray(), [0x96], " look,45 1/2"u8.ToArray(), [0x94], "\n"u8.ToArray()).Value;
        Assert.Empty(plan.Problems);
        _job.Do(plan.Draft);
        var window = _job.House.FindTag("W01")!;
        Assert.Equal(("K\u00fcche", "\u201cBo\u2019s\u201d \u2013 look"), (window.Room!.Name, window.Item.Get(WindowFacts.Note)));
        Assert.Equal(Length.FromInches(45, 1, 2), window.RoughWidth);
    }

    [Fact]
    public void ASignThatWasLostBeforeIsListedAndTheRowTaken()
    {
        var plan = Plan("tag,room,width\nW01,K\ufffdche,30\n").Value;
        Assert.Equal(("room", false, true), (Assert.Single(plan.Problems).Column, plan.Problems[0].RowLost, plan.Problems[0].Taken));
        Assert.Single(plan.Windows);
    }

    [Theory]
    [InlineData("Total glass,,30")]
    [InlineData("TOTAL: 12,,")]
    [InlineData("Sum of areas,,30")]
    [InlineData("Subtotal upper floor,,30")]
    public void ARowOfTotalsIsNoWindowAndSaid(string row)
    {
        var plan = Plan($"tag,room,width\nW01,Total Fitness,30\n{row}\nTotem,Den,30\n").Value;
        Assert.Equal(["W01", "Totem"], plan.Windows.Select(w => w.Tag));
        Assert.Contains(plan.Understood, u => u.Contains("line 3 left out: it is a row of totals", StringComparison.Ordinal));
    }

    /// <summary>"Küche" in code page 850 (IBM): ü is 0x81; in Windows-1250 š is 0x9a; in Mac OS Roman é is 0x8e (from memory).</summary>
    [Theory]
    [InlineData("850", 0x81, "Küche", "K", "che")]
    [InlineData("ibm850", 0x81, "Küche", "K", "che")]
    [InlineData("1250", 0x9a, "Košice", "Ko", "ice")]
    [InlineData("macintosh", 0x8e, "Séjour", "S", "jour")]
    public void AnEncodingThatIsNamedIsTaken(string encoding, byte letter, string room, string before, string after)
    {
        byte[] file = [.. Encoding.ASCII.GetBytes($"tag,room,width\nW01,{before}"), letter, .. Encoding.ASCII.GetBytes($"{after},30\n")];
        Assert.Equal(room, ScheduleImport.Plan(_job.Scribe.Log, file, "w.csv", ScheduleOptions.ByHeaders with { Encoding = encoding }).Value.NewRooms.Single());
        Assert.Contains("no encoding \"morse\"", ScheduleImport.Plan(_job.Scribe.Log, file, "w.csv",
            ScheduleOptions.ByHeaders with { Encoding = "morse" }).Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void ADecimalCommaIsReadAndSaidAndOneThatMayBeAThousandsMarkIsAskedAbout()
    {
        var plan = Plan("tag;width (cm);height (cm)\nW01;91,5;120,25\nW02;1,200;90\n").Value;
        Assert.Equal(["91,5 read as 91.5", "120,25 read as 120.25"], plan.Understood.ToArray());
        Assert.Equal([3], plan.Problems.Select(p => p.Line));
        _job.Do(plan.Draft);
        Assert.Equal(Length.FromMillimetres(915), _job.House.FindTag("W01")!.RoughWidth);
        Assert.Equal(Length.FromMillimetres(1202.5m), _job.House.FindTag("W01")!.RoughHeight);
        Assert.Null(_job.House.FindTag("W02")!.RoughWidth);
    }

    [Fact]
    public void AHeaderOfTwoRowsTellsColumnsOfOneNameApart()
    {
        var plan = Plan(",,Unit,,Rough opening,\nTag,Room,Width,Height,Width,Height\nW01,Den,29,39,30,40\n").Value;
        _job.Do(plan.Draft);
        Assert.Equal(Length.FromInches(30), _job.House.FindTag("W01")!.RoughWidth);
        Assert.Equal(Length.FromInches(40), _job.House.FindTag("W01")!.RoughHeight);
    }

    /// <summary>An office calls its own types A, B and C; a kit may have a kind that begins so.</summary>
    [Fact]
    public void ALetterIsNoKindAndWhatWasReadByABeginningIsListed()
    {
        var plan = Plan("tag,kind,power\nW01,R,panel\nW02,roll,b\nW03,Roller,panel\nW04,roll,\n").Value;
        Assert.Equal("2 kind: \"R\" is too short to tell a kind by: write its name, such as Roller.", Problems(plan));
        Assert.Equal(["Kind \"roll\" read as Roller", "Power \"b\" read as battery"], plan.Understood.ToArray());
        Assert.Equal(["power panel", "kind Roller, power battery", "kind Roller, power panel", "kind Roller"], plan.Windows.Select(w => w.Unit));
        _job.Do(plan.Draft);
        Assert.Null(_job.Unit("W01").Kind);
        Assert.Equal("Roller", _job.Unit("W02").Kind!.Name);
    }

    [Theory]
    [InlineData("Pos.;Raum;Geschoss;Breite;Höhe;Anzahl;Bemerkung", "Summe EG;;;;;7;")]
    [InlineData("Marca;Estancia;Planta;Ancho;Alto;Cantidad;Observaciones", "Suma;;;;;7;")]
    public void HeadersAndTotalsAreGermanAndSpanishToo(string header, string total)
    {
        var plan = Plan($"{header}\nF1;Bad;EG;900 mm;1200 mm;1;\n{total}\n").Value;
        Assert.Empty(plan.Problems);
        Assert.Equal(("F1", "Bad"), (Assert.Single(plan.Windows).Tag, plan.Windows[0].Room));
        Assert.Equal("line 3 left out: it is a row of totals", Assert.Single(plan.Understood));
        _job.Do(plan.Draft);
        Assert.Equal(Length.FromMillimetres(900), _job.House.FindTag("F1")!.RoughWidth);
    }

    /// <summary>Nothing in it is like a header, and it does not begin with a row at all.</summary>
    [Theory]
    [InlineData(",,\n1,2,3\n4,5,6\n")]
    [InlineData("\n\n1,2,3\n")]
    public void AFileOfFiguresAloneIsRefusedOrShown(string csv)
    {
        Assert.Contains("The columns are: 1, 2, 3.", Plan(csv).Reason, StringComparison.Ordinal);
        Assert.Equal(["1", "2", "3"], Plan(csv, ScheduleOptions.ByHeaders with { Unmapped = true }).Value.Unused.ToArray());
    }

    [Fact]
    public void AFileWhoseTagsAreInNoKnownColumnIsShownWithItsColumnsToWhoeverCanSay()
    {
        const string csv = "Neubau 12;;\nKürzel;Wo;Lichte\nW01;Bad;900 mm\nW02;Flur;1,20\n";
        Assert.Contains("The columns are: Kürzel, Wo, Lichte.", Plan(csv).Reason, StringComparison.Ordinal);
        var shown = Plan(csv, ScheduleOptions.ByHeaders with { Unmapped = true }).Value;
        Assert.Equal(["Kürzel", "Wo", "Lichte"], shown.Unused.ToArray());
        Assert.False(shown.Changes);
        Assert.Equal("Nothing was read.", Assert.Single(shown.Problems).Outcome);
        var columns = ImmutableDictionary<ScheduleField, string>.Empty.Add(ScheduleField.Tag, "Kürzel").Add(ScheduleField.Width, "Lichte");
        Assert.Equal(["W01", "W02"], Plan(csv, ScheduleOptions.ByHeaders with { Columns = columns }).Value.Windows.Select(w => w.Tag));
    }
}
