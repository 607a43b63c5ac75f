using System.Globalization;
using System.Text;
using TrimOut.Core.History;

namespace TrimOut.HouseFile;

/// <summary>Keeps a second program out of an open house. The system lets go of it when the program ends, however it ends.</summary>
internal sealed class HouseLock : IDisposable
{
    private readonly Surroundings _here;
    private readonly HouseFileNames _names;
    private readonly IDisposable _held;

    private HouseLock(Surroundings here, HouseFileNames names, IDisposable held)
    {
        _here = here;
        _names = names;
        _held = held;
    }

    /// <summary>Takes the house for this program.</summary>
    /// <exception cref="HouseStoreException">Another program has it; the message says who and since when.</exception>
    /// <exception cref="IOException">The folder can't be written to.</exception>
    /// <exception cref="UnauthorizedAccessException">The folder may not be written to.</exception>
    public static HouseLock Take(Surroundings here, HouseFileNames names)
    {
        var held = Held(here, names) ?? throw new HouseStoreException(StoreFault.InUse,
            $"{names.Main} is open in another program: {Holder(here, names)}. Close it there, or open it here for reading only.");
        try
        {
            var since = here.Clock.GetLocalNow().ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture);
            using var note = here.Files.Create(names.InUse, like: names.Main);
            note.Write(0, Encoding.UTF8.GetBytes(string.Create(CultureInfo.InvariantCulture,
                $"{here.User} on {here.Machine}, program number {Environment.ProcessId}, since {since}\n")));
            return new HouseLock(here, names, held);
        }
        catch
        {
            held.Dispose();
            throw;
        }
    }

    /// <summary>Lets go.</summary>
    public void Dispose()
    {
        try
        {
            _here.Files.Delete(_names.InUse);
        }
        catch (Exception failed) when (Faults.OfDisk(failed))
        {
            // A note that stays behind locks nobody out: only the held name does.
        }
        _held.Dispose();
    }

    private static IDisposable? Held(Surroundings here, HouseFileNames names)
    {
        try
        {
            return here.Files.TryHold(names.Lock);
        }
        catch (UnauthorizedAccessException failed) when (File.Exists(names.Lock))
        {
            throw new UnauthorizedAccessException($"{names.Lock} is another user's, and this one has no right to it. Who has the house open: "
                + $"{Holder(here, names)}. If nobody has, remove that file.", failed);
        }
    }

    private const string NotSaid = "it does not say which";

    private static string Holder(Surroundings here, HouseFileNames names)
    {
        try
        {
            return here.Files.Exists(names.InUse) && Encoding.UTF8.GetString(here.Files.Read(names.InUse)).Trim() is { Length: > 0 } who
                ? who : NotSaid;
        }
        catch (Exception failed) when (Faults.OfDisk(failed))
        {
            return NotSaid;
        }
    }
}
