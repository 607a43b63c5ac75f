using System.Security.Cryptography;
using TrimOut.HouseFile.Durable;
using TrimOut.HouseFile.Files;

namespace TrimOut.HouseFile;

/// <summary>What a house file takes from outside: the disk, the clock, the machine.</summary>
/// <param name="Files">The disk.</param>
/// <param name="Clock">The clock.</param>
/// <param name="Machine">The machine's name.</param>
/// <param name="User">Who is at it.</param>
/// <param name="FreshName">Some letters that nobody had before.</param>
/// <param name="Seal">How entries are sealed.</param>
internal sealed record Surroundings(IFileLayer Files, TimeProvider Clock, string Machine, string User, Func<string> FreshName, SealMaker Seal)
{
    /// <summary>This machine.</summary>
    public static Surroundings Here(TimeProvider clock) =>
        new(DiskFiles.Instance, clock, Environment.MachineName, LoginName.Now, () =>
            RandomNumberGenerator.GetString("abcdefghjkmnpqrstuvwxyz23456789", 8), Durable.Seal.Of);

    /// <summary>A device name that no other copy of any house has.</summary>
    public string FreshDevice()
    {
        var machine = new string([.. Machine.ToLowerInvariant().Where(char.IsAsciiLetterOrDigit).Take(12)]);
        return (machine.Length == 0 ? "laptop" : machine) + "-" + FreshName();
    }
}
