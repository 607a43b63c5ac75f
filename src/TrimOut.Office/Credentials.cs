using System.Text.Json;
using System.Text.Json.Serialization;
using TrimOut.Core;

namespace TrimOut.Office;

/// <summary>What a device is known by at the office, and how it knows the office. Handed out by the office as one file.</summary>
/// <param name="Host">The name or address that stands in the office's certificate.</param>
/// <param name="Port">The port, from 1 to 65535.</param>
/// <param name="Database">The database.</param>
/// <param name="Device">What the device is called at the office: lower-case letters, digits and hyphens.</param>
/// <param name="Login">What it logs in by.</param>
/// <param name="Password">The secret; null where it comes from the environment, or from where <see cref="PasswordIn"/> says.</param>
/// <param name="Root">The certificate that the office's own is signed by, as PEM; nothing else is trusted.</param>
public sealed record Credentials(string Host, int Port, string Database, string Device, string Login, [property: JsonIgnore(Condition
    = JsonIgnoreCondition.WhenWritingNull)] string? Password, string Root)
{
    /// <summary>The environment variable that names the credentials file.</summary>
    public const string FileVariable = "TRIMOUT_OFFICE";

    /// <summary>The environment variable that holds the secret where the file does not.</summary>
    public const string PasswordVariable = "TRIMOUT_OFFICE_PASSWORD";

    /// <summary>What <see cref="PasswordIn"/> says where the operating system's own store of secrets has it.</summary>
    public const string SystemStore = "system";

    /// <summary>Where the secret is that is not in the file: <see cref="SystemStore"/>, or null.</summary>
    [JsonPropertyName("password-in")]
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public string? PasswordIn { get; init; }

    /// <summary>The most bytes of a credentials file.</summary>
    public const int Largest = 64 * 1024;

    /// <summary>Reads what stands in a credentials file.</summary>
    /// <param name="text">The text.</param>
    /// <returns>The credentials, or what is wrong with the text; the secret is never said.</returns>
    public static Result<Credentials> Read(ReadOnlySpan<byte> text)
    {
        try
        {
            return JsonSerializer.Deserialize(text, CredentialsJson.Default.Credentials) switch
            {
                null => new Refusal("it is empty."),
                { Port: < 1 or > 65535 } read => new Refusal($"there is no port {read.Port}."),
                { PasswordIn: not (null or SystemStore) } => new Refusal("it says that the password is in a place that this TrimOut does not know."),
                { Host.Length: > 0, Database.Length: > 0, Device.Length: > 0, Login.Length: > 0 } read when read.Root?.Contains("CERTIFICATE",
                    StringComparison.Ordinal) == true => read,
                _ => new Refusal("host, database, device, login or root is missing."),
            };
        }
        catch (JsonException)
        {
            return new Refusal("it is no credentials file of TrimOut.");
        }
    }

    /// <summary>The text of a credentials file. It holds the secret: whoever writes it makes it readable by its owner alone.</summary>
    public byte[] Write() => JsonSerializer.SerializeToUtf8Bytes(this, CredentialsJson.Default.Credentials);

    /// <summary>Everything but the secret.</summary>
    public override string ToString() => $"{Device} at {Host}:{Port}/{Database}";
}

[JsonSourceGenerationOptions(JsonSerializerDefaults.Web, WriteIndented = true)]
[JsonSerializable(typeof(Credentials))]
internal sealed partial class CredentialsJson : JsonSerializerContext;
