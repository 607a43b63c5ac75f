using System.Reflection;

namespace TrimOut;

/// <summary>
/// Which program this is. The number stands in one place, <c>.build/Common.props</c>; the commit comes from the repository that it was built in.
/// </summary>
internal static class ProgramVersion
{
    /// <summary>The number and, behind a plus, the commit where there was one.</summary>
    public static string Whole { get; } =
        typeof(ProgramVersion).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()?.InformationalVersion ?? "";

    /// <summary>The number.</summary>
    public static string Short { get; } = Whole.Split('+')[0];
}
