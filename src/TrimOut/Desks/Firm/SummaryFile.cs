using System.Collections.Immutable;
using System.Text.Json;
using System.Text.Json.Serialization;
using TrimOut.Core.Plans.Firm;
using TrimOut.HouseFile;
using TrimOut.HouseFile.Files;

namespace TrimOut.Desks.Firm;

/// <summary>The summary of a house as it is kept: beside the house file, or with the user's own files where that folder can't be written.</summary>
/// <remarks>It only spares time. What is gone, damaged or of another program is made anew; two programs that write it put a whole one in its place.</remarks>
/// <param name="Program">Which program made it: another one may count otherwise.</param>
/// <param name="Stamp">The stamp of the house file that it was made of.</param>
/// <param name="Summary">The summary; null where the house could not be opened.</param>
/// <param name="Why">Why it could not be; null where it could.</param>
/// <param name="Remarks">What was to be said about how the house was found.</param>
/// <param name="InDoubt">Whether saves of it are in doubt.</param>
/// <param name="Held">Exactly the changes that it has, as <see cref="Office.HeldChanges"/> writes them; empty where it could not be opened.</param>
internal sealed record SummaryFile(string Program, string Stamp, HouseSummary? Summary, string? Why, ImmutableArray<string> Remarks, bool InDoubt, string Held)
{
    private const string Ending = ".summary";
    private const int Largest = 1 << 20;

    /// <summary>This program.</summary>
    public static string ThisProgram { get; } = typeof(HouseSummary).Module.ModuleVersionId.ToString("N");

    /// <summary>What is kept of a house; null where nothing is, or nothing that can be read.</summary>
    public static SummaryFile? Read(string house)
    {
        foreach (var path in Places(house))
        {
            try
            {
                if (File.Exists(path) && JsonSerializer.Deserialize(PlainFile.ReadAll(path, Largest), SummaryJson.Default.SummaryFile) is { } read
                    && IsWhole(read))
                    return read;
            }
            catch (Exception failed) when (failed is IOException or UnauthorizedAccessException or JsonException)
            {
                // Made anew.
            }
        }
        return null;
    }

    /// <summary>Keeps it, beside the house where that can be.</summary>
    public void Write(string house)
    {
        var bytes = JsonSerializer.SerializeToUtf8Bytes(this, SummaryJson.Default.SummaryFile);
        foreach (var path in Places(house))
        {
            try
            {
                OwnFile.Write(path, bytes);
                return;
            }
            catch (Exception failed) when (failed is IOException or UnauthorizedAccessException)
            {
                // Elsewhere, or not at all: then it is made anew each time.
            }
        }
    }

    /// <summary>Whether it was made of the house file as it is now, by this program.</summary>
    public bool IsFresh(string stamp) => Program == ThisProgram && Stamp == stamp;

    private static IEnumerable<string> Places(string house)
    {
        yield return house + Ending;
        if (KeptPlace.Folder() is { } folder)
            yield return Path.Combine(folder, HouseStamp.PlaceOf(house) + Ending);
    }

    private static bool IsWhole(SummaryFile read) => read is { Program: not null, Stamp: not null, Held: not null, Remarks.IsDefault: false }
        && read.Remarks.All(r => r is not null) && (read.Summary is null ? read.Why is not null
        : read.Summary is
        {
            Name: not null, Begun: not null, Phases.IsDefault: false, BeforePaint.Waiting.IsDefault: false,
            Painted.Waiting.IsDefault: false
        } summary
            && !summary.Visits.IsDefault && summary is { Address: not null, People.IsDefault: false, Conflicts.IsDefault: false }
            && !summary.Days.IsDefault && !summary.Boxes.IsDefault
            && summary.Phases.Length == Core.Phases.PhaseNames.All.Count
            && summary.Visits.All(v => v is not null && !v.Expected.IsDefault && !v.Before.IsDefault && v.Before.All(b => b is { Who.IsDefault: false }))
            && summary.Days.All(d => d is not null) && summary.Conflicts.All(c => c is not null));
}

[JsonSourceGenerationOptions(JsonSerializerDefaults.Web, UseStringEnumConverter = true, IgnoreReadOnlyProperties = true)]
[JsonSerializable(typeof(SummaryFile))]
internal sealed partial class SummaryJson : JsonSerializerContext;
