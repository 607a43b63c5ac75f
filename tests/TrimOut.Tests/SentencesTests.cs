using System.Reflection;
using System.Reflection.Emit;
using TrimOut.Core.Wording;

namespace TrimOut.Tests;

/// <summary>A sentence becomes words only for a reader: printed as it stands it would show places and stored figures.</summary>
public class SentencesTests
{
    private const BindingFlags Every = BindingFlags.Instance | BindingFlags.Static | BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.DeclaredOnly;

    private static readonly Dictionary<short, OpCode> Codes =
        typeof(OpCodes).GetFields().Select(f => (OpCode)f.GetValue(null)!).DistinctBy(c => c.Value).ToDictionary(c => c.Value);

    private static readonly string[] Ours = ["TrimOut.Core", "TrimOut.HouseFile", "TrimOut.Papers", "TrimOut.Screens", "trimout"];

    [Fact]
    public void NoSentenceMessageOrArgumentIsPutIntoATextAsItStands() =>
        Assert.Empty(Ours.SelectMany(a => Assembly.Load(a).GetTypes()).SelectMany(MethodsOf).Where(PrintsOne).Select(m => $"{m.DeclaringType}.{m.Name}"));

    // A test that can't find anything would pass as well.
    [Fact]
    public void OneThatIsPutIntoATextIsSeen() =>
        Assert.Equal([nameof(Printed), nameof(Joined)], MethodsOf(typeof(SentencesTests)).Where(PrintsOne).Select(m => m.Name));

    private static string Printed(Sentence sentence) => $"Found: {sentence}";

    private static string Joined(IEnumerable<Arg> args) => string.Join(", ", args);

    private static IEnumerable<MethodBase> MethodsOf(Type type) => [.. type.GetMethods(Every), .. type.GetConstructors(Every)];

    /// <summary>Whether a method formats, joins or appends one of ours as a type argument, as the compiler writes an interpolated text.</summary>
    private static bool PrintsOne(MethodBase method) => Calls(method).OfType<MethodInfo>().Any(called =>
        called is { IsGenericMethod: true, Name: "AppendFormatted" or "Join" or "Concat" or "AppendJoin" } && called.GetGenericArguments().Any(IsOne));

    private static bool IsOne(Type type) => typeof(Sentence).IsAssignableFrom(type) || typeof(Arg).IsAssignableFrom(type) || type == typeof(Message);

    /// <summary>The methods that a method calls, read from its instructions (ECMA-335, III).</summary>
    private static IEnumerable<MethodBase> Calls(MethodBase method)
    {
        var code = method.GetMethodBody()?.GetILAsByteArray() ?? [];
        for (var at = 0; at < code.Length;)
        {
            var two = code[at] == 0xfe;
            var op = Codes[two ? unchecked((short)(0xfe00 | code[at + 1])) : code[at]];
            at += two ? 2 : 1;
            if (op.OperandType == OperandType.InlineMethod)
            {
                yield return method.Module.ResolveMethod(BitConverter.ToInt32(code, at),
                    method.DeclaringType is { IsGenericType: true } of ? of.GetGenericArguments() : null,
                    method is MethodInfo { IsGenericMethod: true } ? method.GetGenericArguments() : null)!;
            }
            at += op.OperandType switch
            {
                OperandType.InlineNone => 0,
                OperandType.ShortInlineBrTarget or OperandType.ShortInlineI or OperandType.ShortInlineVar => 1,
                OperandType.InlineVar => 2,
                OperandType.InlineI8 or OperandType.InlineR => 8,
                OperandType.InlineSwitch => 4 + 4 * BitConverter.ToInt32(code, at),
                _ => 4,
            };
        }
    }
}
