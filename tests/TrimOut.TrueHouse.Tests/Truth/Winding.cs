namespace TrimOut.TrueHouse.Tests.Truth;

/// <summary>A fabric as it goes on its tube, turn by turn.</summary>
public static class Winding
{
    /// <summary>The room that a roll needs to turn: its largest diameter with a whole fabric more on each side for the step of the outer turn.</summary>
    public static double Room(double tube, double fabric, double length)
    {
        var across = tube;
        while (length > 0)
        {
            length -= Math.PI * (across + fabric);
            across += 2 * fabric;
        }
        return across + (2 * fabric);
    }
}
