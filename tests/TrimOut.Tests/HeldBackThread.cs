using System.ComponentModel;
using System.Runtime.ExceptionServices;
using System.Runtime.InteropServices;

namespace TrimOut.Tests;

/// <summary>
/// A thread that the rights of files hold back, with those that it begins, also where the tests are run by the machine's administrator. Linux only.
/// </summary>
internal static class HeldBackThread
{
    private const uint ThirdVersion = 0x20080522;

    /// <summary>The rights to read, write and look into everything (capabilities(7): CAP_DAC_OVERRIDE, CAP_DAC_READ_SEARCH).</summary>
    private const uint Overriding = (1 << 1) | (1 << 2);

    /// <summary>Does something on such a thread; what it throws is thrown here.</summary>
    public static void Run(Action work)
    {
        ExceptionDispatchInfo? failed = null;
        var thread = new Thread(() =>
        {
            try
            {
                GiveUpRights();
                work();
            }
            catch (Exception fault)
            {
                failed = ExceptionDispatchInfo.Capture(fault);
            }
        });
        thread.Start();
        thread.Join();
        failed?.Throw();
    }

    private static void GiveUpRights()
    {
        var of = new Header { Version = ThirdVersion };
        // Two sets of effective, permitted and inheritable rights: those up to 31, and those above.
        var rights = new uint[6];
        if (Get(ref of, rights) != 0)
            throw new Win32Exception();
        for (var at = 0; at < 3; at++)
            rights[at] &= ~Overriding;
        if (Set(ref of, rights) != 0)
            throw new Win32Exception();
    }

    [StructLayout(LayoutKind.Sequential)]
    private struct Header
    {
        public uint Version;
        public int Thread;
    }

    [DllImport("libc", EntryPoint = "capget", SetLastError = true)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static extern int Get(ref Header of, [In, Out] uint[] rights);

    [DllImport("libc", EntryPoint = "capset", SetLastError = true)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static extern int Set(ref Header of, uint[] rights);
}
