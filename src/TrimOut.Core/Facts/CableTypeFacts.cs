using TrimOut.Core.Houses;
using TrimOut.Core.Units;

namespace TrimOut.Core.Facts;

/// <summary>What the sheet says about a cable.</summary>
public static class CableTypeFacts
{
    private static readonly Declare Of = new(ItemKind.CableType);

    public static readonly Fact<string> Name = Of.Text("name", "Cable", "What the crew calls it.", null, 40);
    public static readonly Fact<ConductorSize> Conductor = Of.Conductor("conductor", "Conductor", "Gauge or metric size.");
    public static readonly Fact<Stranding> Stranding = Of.Choice<Stranding>("stranding", "Stranding", "Solid or stranded.");
    public static readonly Fact<CableListing> Listing = Of.Choice<CableListing>("listing", "Listing", "What is printed on the jacket.");
    public static readonly Fact<string> Colours = Of.Text("colours", "Conductor colors",
        "The color of each conductor with its stripe or tape, with a comma between two.", null, 80);
    public static readonly Fact<string> Plus = Of.Text("plus", "Positive conductor",
        "Which of these colors is plus: as the sheet says, else as you settle it for this house.", null, 40);
    public static readonly Fact<Length> LongestRun = Of.Cable("longest-run", "Longest run", "The longest run that the maker's table allows with it.", null);
    public static readonly Fact<Length> Diameter = Of.Opening("diameter", "Outside diameter", "Over the jacket.", null, 0, 2);
    public static readonly Fact<Length> BoxLength = Of.Cable("box-length", "Box length", "Cable in a full box.", null, 10000);
    public static readonly Fact<Length> OnHand = Of.Cable("on-hand", "On hand", "How much of it there is for this house, all boxes together.", null, 100000);

    public static readonly Fact<PartCounts> PartsPerRun = Of.Parts("parts-per-run", "Parts per run", "What each run of it needs besides the cable, counted.");

    internal static readonly Fact[] All =
        [Name, Conductor, Stranding, Listing, Colours, Plus, LongestRun, Diameter, BoxLength, OnHand, PartsPerRun, .. AboutSheet.Declared(Of)];
}
