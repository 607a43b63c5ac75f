using System.Text.RegularExpressions;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Screens.Kit;
using TrimOut.Screens.Tests;

namespace TrimOut.Tests.WholeJob;

/// <summary>Somebody with the sheets of an invented kit in hand, who types what stands on them.</summary>
internal sealed class SheetReader(TerminalUser user)
{
    private static readonly Dictionary<Fact, string> Says = new()
    {
        [CoveringKindFacts.MotorEnd] = "left",
        [CoveringKindFacts.MotorVolts] = "20",
        [CoveringKindFacts.LeastVolts] = "17",
        [CoveringKindFacts.RunningCurrent] = "0.55",
        [CoveringKindFacts.StartingCurrent] = "0.9",
        [CoveringKindFacts.WithoutPower] = "moved by hand",
        [CoveringKindFacts.EndBracket] = "5/8",
        [CoveringKindFacts.Widest] = "118",
        [CoveringKindFacts.Highest] = "126",
        [CoveringKindFacts.EndBracketBack] = "2 1/8",
        [CoveringKindFacts.EndBracketDown] = "2 3/8",
        [CoveringKindFacts.CentreBracket] = "1 3/8",
        [CoveringKindFacts.CentreFrom] = "88",
        [CoveringKindFacts.GapBetween] = "3/16",
        [CoveringKindFacts.GapMost] = "3/8",
        [CoveringKindFacts.EndAllowance] = "1/16",
        [CoveringKindFacts.OrderedInside] = "opening",
        [CoveringKindFacts.DeductionInside] = "3/16",
        [CoveringKindFacts.OrderedOutside] = "made",
        [CoveringKindFacts.DeductionOutside] = "0",
        [CoveringKindFacts.PartsPerUnit] = "2 brackets, 6 screws",
        [CoveringKindFacts.Setback] = "3/4",
        [CoveringKindFacts.LeadBehind] = "4",
        [CoveringKindFacts.Tube] = "1 5/8",
        [CoveringKindFacts.FabricThickness] = "0.4 mm",
        [CoveringKindFacts.ExtraFabric] = "7",
        [CoveringKindFacts.DepthNeeded] = "2 1/4",
        [CoveringKindFacts.DepthFlush] = "3 1/2",
        [CoveringKindFacts.RoundTo] = "1/8",
        [CoveringKindFacts.PairHold] = "11",
        [CoveringKindFacts.PairCue] = "it whistles",
        [CoveringKindFacts.LimitsHow] = "Bring it there.",
        [CoveringKindFacts.LimitHold] = "3",
        [CoveringKindFacts.LimitCue] = "it whistles low",
        [CoveringKindFacts.MiddleScrew] = "none",
        [CoveringKindFacts.PresetHold] = "6",
        [CoveringKindFacts.PresetCue] = "the bar nods",
        [CableTypeFacts.Stranding] = "stranded",
        [CableTypeFacts.Listing] = "CL2R",
        [CableTypeFacts.Colours] = "gray, brown",
        [CableTypeFacts.Plus] = "brown",
        [CableTypeFacts.LongestRun] = "130 ft",
        [CableTypeFacts.Diameter] = "0.27",
        [CableTypeFacts.BoxLength] = "450 ft",
        [PanelTypeFacts.Outputs] = "6",
        [PanelTypeFacts.Supply] = "20",
        [PanelTypeFacts.OutputCurrent] = "1.7",
        [PanelTypeFacts.TotalCurrent] = "8",
        [PanelTypeFacts.InputCurrent] = "1.3",
        [PanelTypeFacts.UnitsPerOutput] = "1",
        [HubTypeFacts.Devices] = "27",
        [RemoteTypeFacts.Units] = "7",
        [HeadCoverFacts.RoomInside] = "3 1/4",
        [HeadCoverFacts.Depth] = "3 3/8",
    };

    /// <summary>Goes through the sheets of the parts that this house takes.</summary>
    public void ReadAll()
    {
        foreach (var name in new[] { "Roller", "16/2", "Panel", "Hub", "Handheld", "Fascia" })
        {
            user.Press("9", "home");
            while (((KitScreen)user.Shell.Screen).Current(user.Shell.Context) is { } at && user.House.NameOf(at) != name)
                user.Press("down");
            user.Press("s", "enter");
            while (user.Shell.Typing is not null)
            {
                var fact = ((SheetInHandScreen)user.Shell.Screen).Current(user.Shell.Context)!;
                if (Says.TryGetValue(fact, out var text) && user.Shell.Typing.Text.Length == 0)
                    user.Type(text);
                else
                    user.Press("enter");
                if (user.Shell.Typing is null && Regex.IsMatch(user.Screen, @"=\s+says\s+so\b"))
                    user.Press("=");
                Assert.True(user.Shell.Typing?.Refused is null, $"{fact.Label}: {user.Shell.Typing?.Refused}");
            }
            Assert.IsType<SheetInHandScreen>(user.Shell.Screen);
        }
    }
}
