namespace TrimOut.Screens.Firm;

/// <summary>The houses of a firm while they are looked at: they change, come and go beside the keys.</summary>
public interface IFirmBoard
{
    /// <summary>The houses as they are known now. Another state takes its place whenever something changes.</summary>
    FirmHousesNow Now { get; }

    /// <summary>Nobody looks any more: no further house is looked after.</summary>
    void Stop();
}

/// <summary>A board where there is no house.</summary>
internal sealed class NoHouses : IFirmBoard
{
    public static IFirmBoard Board { get; } = new NoHouses();

    public FirmHousesNow Now { get; } = new([], 0);

    public void Stop()
    {
        // Nothing is looked after.
    }
}
