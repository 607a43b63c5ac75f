using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Units;
using TrimOut.Screens.Frames;
using TrimOut.Screens.WhatIf;

namespace TrimOut.Screens.Tests.Drawings;

/// <summary>The curve of what arrives, held to Ohm's law worked out here from the conductor's resistance alone.</summary>
public class DropCurveTests
{
    private const int Axis = 9;

    private static readonly WhatIfInputs Inputs = new(Length.FromFeet(100), new ConductorSize.Gauge(16), Stranding.Stranded, new Current(1.2m), 1,
        Length.FromFeet(10), new Voltage(24), new Voltage(20), new Temperature(20));

    private static Frame Drawn(WhatIfInputs inputs, int width = 120, int height = 22, Glyphs? glyphs = null)
    {
        var frame = new Frame(width, height);
        var asked = inputs.Ask(House.Empty, null).Value;
        Assert.Equal(height, DropCurve.Draw(frame.All, inputs, asked, House.Empty, glyphs ?? Glyphs.Drawn));
        return frame;
    }

    /// <summary>16 AWG: 1.29 mm across, 4.016 ohm per 1000 ft solid at 20 C (ASTM B258, from memory); stranded a little more.</summary>
    [Fact]
    public void TheCurveOfTheConductorThatIsAskedAboutFallsAsOhmsLawSays()
    {
        var frame = Drawn(Inputs);
        var (plotWide, plotHigh) = (frame.Width - Axis - 1, frame.Height - 3);
        var asked = Inputs.Ask(House.Empty, null).Value;
        var farthest = DropCurve.Farthest(asked);
        var seen = 0;
        for (var x = 0; x < plotWide; x++)
        {
            var feet = (double)(farthest.Feet * x / (plotWide - 1));
            var volts = 24 - 1.2 * 2 * feet * 4.016 / 1000;
            var rows = Enumerable.Range(0, plotHigh).Where(y => frame.Row(1 + y)[Axis + x].Text == Glyphs.Drawn.Solid).ToList();
            if (rows.Count == 0)
                continue;
            seen++;
            var bottom = 20.0 - 2;
            var expected = (24 - volts) / (24 - bottom) * (plotHigh - 1);
            Assert.InRange(Assert.Single(rows), expected - 1, expected + 1);
        }
        Assert.InRange(seen, plotWide / 2, plotWide);
    }

    [Fact]
    public void AThickerConductorNeverLiesBelowAThinnerOne()
    {
        var asked = Inputs.Ask(House.Empty, null).Value;
        int[] thickestFirst = [12, 14, 16, 18, 20];
        Assert.Equal(thickestFirst.Select(g => (ConductorSize)new ConductorSize.Gauge(g)), DropCurve.Conductors(Inputs.Conductor).Reverse());
        for (var feet = 10; feet <= 300; feet += 10)
        {
            var volts = thickestFirst.Select(g => DropCurve.Of(asked, Inputs, new ConductorSize.Gauge(g))!).Select(q =>
                (q with { OneWay = Length.FromFeet(feet) }).Arrives.Volts).ToList();
            Assert.Equal(volts.OrderDescending(), volts);
        }
    }

    [Fact]
    public void TheMinimumAndTheLengthAreWhereTheyBelong()
    {
        var frame = Drawn(Inputs);
        var plotHigh = frame.Height - 3;
        var least = Enumerable.Range(0, plotHigh).Where(y => frame.Row(1 + y).ToArray().Count(c => c.Text == Glyphs.Drawn.Across) > 40).ToList();
        Assert.Equal((int)Math.Round((24 - 20) / 6.0 * (plotHigh - 1)), Assert.Single(least));
        var text = frame.ToText();
        Assert.Contains("20.0 V", text, StringComparison.Ordinal);
        Assert.Contains("24.0 V", text, StringComparison.Ordinal);
        Assert.Contains("16 AWG", text, StringComparison.Ordinal);
        Assert.Contains($"longest {Inputs.Ask(House.Empty, null).Value.Longest.ShowRounded(DisplayUnits.Inches, LengthScale.Run)}", text,
            StringComparison.Ordinal);
        Assert.Contains(Inputs.OneWay.ShowRounded(DisplayUnits.Inches, LengthScale.Run), text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(1, "1.5 mm2")]
    [InlineData(4, "16 AWG")]
    public void ItIsDrawnForMetricSizesAndForSeveralUnits(int units, string conductor)
    {
        var inputs = Inputs with { Units = units, Conductor = ConductorSize.Read(conductor).Value };
        Assert.Contains(inputs.Conductor.ToString()!, Drawn(inputs).ToText(), StringComparison.Ordinal);
    }

    [Fact]
    public void OnPlainTerminalsItHasPlainSigns() =>
        Assert.DoesNotContain(Drawn(Inputs, glyphs: Glyphs.Ascii).ToText(), c => c > 126);

    [Fact]
    public void WhereThereIsNoRoomNothingIsDrawn()
    {
        var frame = new Frame(80, DropCurve.LeastLines - 1);
        Assert.Equal(0, DropCurve.Draw(frame.All, Inputs, Inputs.Ask(House.Empty, null).Value, House.Empty, Glyphs.Drawn));
        Assert.Equal("", frame.ToText().Trim());
    }
}
