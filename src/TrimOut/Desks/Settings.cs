using System.Collections.Immutable;
using System.Text.Json;
using System.Text.Json.Serialization;
using TrimOut.HouseFile.Files;

namespace TrimOut.Desks;

/// <summary>What the program remembers from one day to the next.</summary>
/// <param name="Look">The look of the screens.</param>
/// <param name="Recent">House files opened lately, the latest first.</param>
/// <param name="Backups">The folder that backups are kept in; null for the usual one.</param>
/// <param name="By">Who works on this machine, as it was asked once; null while nobody was asked.</param>
/// <param name="Mouse">Whether the screens take clicks; null is yes.</param>
/// <param name="Labels">How labels lie on their sheets, as it was typed; null for plain paper.</param>
internal sealed record Settings(string? Look, ImmutableArray<string> Recent, string? Backups = null, string? By = null, bool? Mouse = null,
    string? Labels = null)
{
    /// <summary>Folders that backups were kept in before.</summary>
    public IReadOnlyList<string> BackupsBefore { get; init; } = [];

    /// <summary>Columns that were chosen for schedules, field to header, by the headers that those have.</summary>
    public IReadOnlyDictionary<string, IReadOnlyDictionary<string, string>> Columns { get; init; } = NoColumns;

    /// <summary>Why the file that is there can't be read; null where it can, or there is none.</summary>
    [JsonIgnore]
    public string? Unread { get; init; }

    private static readonly IReadOnlyDictionary<string, IReadOnlyDictionary<string, string>> NoColumns =
        new Dictionary<string, IReadOnlyDictionary<string, string>>();

    private const int RecentAtMost = 12;
    private const int Largest = 1 << 20;

    /// <summary>Reads them; what can't be read counts as never set.</summary>
    public static Settings Read()
    {
        try
        {
            return JsonSerializer.Deserialize(PlainFile.ReadAll(UserFolder.Settings, Largest), SettingsJson.Default.Settings) is { } read
                ? read with { Recent = read.Recent.IsDefault ? [] : read.Recent, BackupsBefore = read.BackupsBefore ?? [], Columns = read.Columns ?? NoColumns }
                : new Settings(null, []);
        }
        catch (Exception failed) when (failed is FileNotFoundException or DirectoryNotFoundException)
        {
            return new Settings(null, []);
        }
        catch (Exception failed) when (failed is IOException or UnauthorizedAccessException or JsonException)
        {
            return new Settings(null, []) { Unread = failed is JsonException ? "it is empty or damaged." : failed.Message };
        }
    }

    /// <summary>With backups kept in another folder from now on.</summary>
    public Settings KeepingIn(string folder) => this with
    {
        Backups = folder,
        BackupsBefore = [.. BackupsBefore.Append(Backups).OfType<string>().Where(f => f != folder).Distinct()],
    };

    /// <summary>With columns that were chosen for schedules of such headers; of many the oldest are forgotten.</summary>
    public Settings Naming(string headers, IReadOnlyDictionary<string, string> columns) => this with
    {
        Columns = Columns.Where(c => c.Key != headers).TakeLast(RecentAtMost - 1).Append(new(headers, columns)).ToDictionary(c => c.Key, c => c.Value),
    };

    /// <summary>With a house file at the head of those opened lately.</summary>
    public Settings Opened(string path) => this with { Recent = [path, .. Recent.Where(r => r != path).Take(RecentAtMost - 1)] };

    /// <summary>Writes them; a disk that can't take them costs nothing but the memory. What can't be read is not written over.</summary>
    public void Write()
    {
        if (Unread is not null)
            return;
        try
        {
            WriteOrFail();
        }
        catch (Exception failed) when (failed is IOException or UnauthorizedAccessException)
        {
            // The screens go on without a memory.
        }
    }

    /// <summary>Writes them. What is there and can't be read is kept beside them.</summary>
    /// <exception cref="IOException">They can't be written.</exception>
    /// <exception cref="UnauthorizedAccessException">There is no right to write them.</exception>
    public void WriteOrFail()
    {
        UserFolder.Make(UserFolder.Path);
        if (Unread is not null && File.Exists(UserFolder.Settings))
            File.Move(UserFolder.Settings, $"{UserFolder.Settings}.unread-{Path.GetRandomFileName()}");
        OwnFile.Write(UserFolder.Settings, JsonSerializer.SerializeToUtf8Bytes(this, SettingsJson.Default.Settings));
    }
}

[JsonSourceGenerationOptions(JsonSerializerDefaults.Web, WriteIndented = true)]
[JsonSerializable(typeof(Settings))]
internal sealed partial class SettingsJson : JsonSerializerContext;
