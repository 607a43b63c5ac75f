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

    private const int RecentAtMost = 12;
    private const int Largest = 1 << 20;

    /// <summary>Reads them; what can't be read counts as never set.</summary>
    public static Settings Read()
    {
        try
        {
            return JsonSerializer.Deserialize(PlainFile.ReadAll(UserFolder.Settings, Largest), SettingsJson.Default.Settings) is { } read
                ? read with { Recent = read.Recent.IsDefault ? [] : read.Recent, BackupsBefore = read.BackupsBefore ?? [] }
                : new Settings(null, []);
        }
        catch (Exception failed) when (failed is IOException or UnauthorizedAccessException or JsonException)
        {
            return new Settings(null, []);
        }
    }

    /// <summary>With backups kept in another folder from now on.</summary>
    public Settings KeepingIn(string folder) => this with
    {
        Backups = folder,
        BackupsBefore = [.. BackupsBefore.Append(Backups).OfType<string>().Where(f => f != folder).Distinct()],
    };

    /// <summary>With a house file at the head of those opened lately.</summary>
    public Settings Opened(string path) => this with { Recent = [path, .. Recent.Where(r => r != path).Take(RecentAtMost - 1)] };

    /// <summary>Writes them; a disk that can't take them costs nothing but the memory.</summary>
    public void Write()
    {
        try
        {
            UserFolder.Make(UserFolder.Path);
            OwnFile.Write(UserFolder.Settings, JsonSerializer.SerializeToUtf8Bytes(this, SettingsJson.Default.Settings));
        }
        catch (Exception failed) when (failed is IOException or UnauthorizedAccessException)
        {
            // The screens go on without a memory.
        }
    }
}

[JsonSourceGenerationOptions(JsonSerializerDefaults.Web, WriteIndented = true)]
[JsonSerializable(typeof(Settings))]
internal sealed partial class SettingsJson : JsonSerializerContext;
