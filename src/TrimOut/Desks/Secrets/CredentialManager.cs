using System.Globalization;
using System.Runtime.InteropServices;
using System.Runtime.Versioning;
using System.Text;
using TrimOut.Office;

namespace TrimOut.Desks.Secrets;

/// <summary>Windows' own store, the Credential Manager: what is in it only this user's programs read.</summary>
/// <remarks>As wincred.h declares it; a secret has at most 2,560 bytes (CRED_MAX_CREDENTIAL_BLOB_SIZE).</remarks>
[SupportedOSPlatform("windows")]
internal sealed partial class CredentialManager : ISecretStore
{
    private const uint Generic = 1;
    private const uint OnThisMachine = 2;
    private const int NotFound = 1168;

    public string Name => "the Credential Manager";

    public string? Lookup(SecretName of, CancellationToken stop)
    {
        if (!CredRead(Target(of), Generic, 0, out var found))
            return Marshal.GetLastPInvokeError() == NotFound ? null : throw Failed();
        try
        {
            var read = Marshal.PtrToStructure<Written>(found);
            var bytes = new byte[read.SecretBytes];
            if (bytes.Length > 0)
                Marshal.Copy(read.Secret, bytes, 0, bytes.Length);
            return Encoding.Unicode.GetString(bytes);
        }
        finally
        {
            CredFree(found);
        }
    }

    public void Store(SecretName of, string secret, CancellationToken stop)
    {
        var bytes = Encoding.Unicode.GetBytes(secret);
        var (target, user, kept) = (Marshal.StringToCoTaskMemUni(Target(of)), Marshal.StringToCoTaskMemUni(of.Device), Marshal.AllocCoTaskMem(bytes.Length));
        try
        {
            Marshal.Copy(bytes, 0, kept, bytes.Length);
            var written = new Written
            {
                Type = Generic,
                Target = target,
                Secret = kept,
                SecretBytes = (uint)bytes.Length,
                Persist = OnThisMachine,
                User = user,
            };
            if (!CredWrite(in written, 0))
                throw Failed();
        }
        finally
        {
            Marshal.Copy(new byte[bytes.Length], 0, kept, bytes.Length);
            Marshal.FreeCoTaskMem(kept);
            Marshal.FreeCoTaskMem(user);
            Marshal.FreeCoTaskMem(target);
        }
    }

    public void Forget(SecretName of, CancellationToken stop)
    {
        if (!CredDelete(Target(of), Generic, 0) && Marshal.GetLastPInvokeError() != NotFound)
            throw Failed();
    }

    private static string Target(SecretName of) => $"{SecretName.Service}/{of}";

    private static OfficeException Failed() => new(OfficeFault.NoCredentials, string.Create(CultureInfo.InvariantCulture,
        $"The Credential Manager answers with error {Marshal.GetLastPInvokeError()}: {Marshal.GetLastPInvokeErrorMessage().TrimEnd('.')}."));

    [LibraryImport("advapi32", EntryPoint = "CredReadW", SetLastError = true, StringMarshalling = StringMarshalling.Utf16)]
    [return: MarshalAs(UnmanagedType.Bool)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.System32)]
    private static partial bool CredRead(string target, uint type, uint flags, out nint found);

    [LibraryImport("advapi32", EntryPoint = "CredWriteW", SetLastError = true)]
    [return: MarshalAs(UnmanagedType.Bool)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.System32)]
    private static partial bool CredWrite(in Written credential, uint flags);

    [LibraryImport("advapi32", EntryPoint = "CredDeleteW", SetLastError = true, StringMarshalling = StringMarshalling.Utf16)]
    [return: MarshalAs(UnmanagedType.Bool)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.System32)]
    private static partial bool CredDelete(string target, uint type, uint flags);

    [LibraryImport("advapi32")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.System32)]
    private static partial void CredFree(nint found);

    /// <summary>CREDENTIALW.</summary>
    [StructLayout(LayoutKind.Sequential)]
    private struct Written
    {
        public uint Flags;
        public uint Type;
        public nint Target;
        public nint Comment;
        public uint WrittenLow;
        public uint WrittenHigh;
        public uint SecretBytes;
        public nint Secret;
        public uint Persist;
        public uint AttributeCount;
        public nint Attributes;
        public nint Alias;
        public nint User;
    }
}
