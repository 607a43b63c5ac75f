using System.Reflection;
using System.Runtime.CompilerServices;

namespace TrimOut.Core.Tests.PublicApi;

/// <summary>What an assembly offers to others, a line each: so that a change of it is seen where changes are seen.</summary>
internal static class Surface
{
    private const BindingFlags Declared =
        BindingFlags.Instance | BindingFlags.Static | BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.DeclaredOnly;

    /// <summary>What every record has anyway.</summary>
    private static readonly HashSet<string> OfRecords =
        ["Equals", "GetHashCode", "ToString", "op_Equality", "op_Inequality", "Deconstruct", "EqualityContract", "PrintMembers", "<Clone>$"];

    /// <summary>The lines, in order.</summary>
    public static IEnumerable<string> Of(Assembly assembly) =>
        assembly.GetExportedTypes().SelectMany(t => Lines(t)).Order(StringComparer.Ordinal);

    private static IEnumerable<string> Lines(Type type)
    {
        yield return $"{Name(type)}: {Kind(type)}{Bases(type)}";
        if (type.IsEnum)
        {
            foreach (var name in Enum.GetNames(type))
                yield return $"{Name(type)}.{name} = {Convert.ToInt64(Enum.Parse(type, name), System.Globalization.CultureInfo.InvariantCulture)}";
            yield break;
        }
        foreach (var member in type.GetMembers(Declared))
        {
            if (Line(member) is { } line)
                yield return $"{Name(type)}.{line}";
        }
    }

    private static string? Line(MemberInfo member) => member switch
    {
        _ when OfRecords.Contains(member.Name) || member.IsDefined(typeof(CompilerGeneratedAttribute)) && member is not PropertyInfo => null,
        MethodInfo { IsSpecialName: true } when !member.Name.StartsWith("op_", StringComparison.Ordinal) => null,
        MethodInfo method when IsSeen(method) => $"{method.Name}{Generic(method)}({Parameters(method)}): {Name(method.ReturnType)}",
        ConstructorInfo made when IsSeen(made) && !IsCopy(made) => $"new({Parameters(made)})",
        PropertyInfo property when property.GetMethod is { } get && IsSeen(get) =>
            $"{property.Name}: {Name(property.PropertyType)}{(property.SetMethod is { } set && IsSeen(set) ? IsInit(set) ? " init" : " set" : "")}",
        FieldInfo { IsPublic: true } field =>
            $"{field.Name}: {(field.IsLiteral ? "const " : "")}{Name(field.FieldType)}{(field.IsLiteral ? $" = {field.GetRawConstantValue()}" : "")}",
        EventInfo raised when raised.AddMethod is { } add && IsSeen(add) => $"{raised.Name}: event {Name(raised.EventHandlerType!)}",
        _ => null,
    };

    private static bool IsSeen(MethodBase method) =>
        method.IsPublic || ((method.IsFamily || method.IsFamilyOrAssembly) && method.DeclaringType is { IsSealed: false });

    private static bool IsCopy(ConstructorInfo made) => made.GetParameters() is [var only] && only.ParameterType == made.DeclaringType;

    private static bool IsInit(MethodInfo set) => set.ReturnParameter.GetRequiredCustomModifiers().Contains(typeof(IsExternalInit));

    private static string Kind(Type type) => type switch
    {
        { IsEnum: true } => "enum",
        { IsInterface: true } => "interface",
        { IsValueType: true } => "struct",
        { IsAbstract: true, IsSealed: true } => "static class",
        { IsAbstract: true } => "abstract class",
        { IsSealed: true } => "sealed class",
        _ => "class",
    };

    private static string Bases(Type type) =>
        type.BaseType is { } under && under != typeof(object) && under != typeof(ValueType) && under != typeof(Enum) ? $" over {Name(under)}" : "";

    private static string Generic(MethodInfo method) =>
        method.IsGenericMethodDefinition ? $"<{string.Join(", ", method.GetGenericArguments().Select(a => a.Name))}>" : "";

    private static string Parameters(MethodBase method) =>
        string.Join(", ", method.GetParameters().Select(p => $"{Name(p.ParameterType)} {p.Name}{(p.HasDefaultValue ? $" = {p.DefaultValue ?? "null"}" : "")}"));

    private static string Name(Type type)
    {
        if (type.IsGenericParameter)
            return type.Name;
        if (type.IsArray)
            return $"{Name(type.GetElementType()!)}[]";
        if (type.IsByRef)
            return $"ref {Name(type.GetElementType()!)}";
        const string ours = "TrimOut.Core";
        var space = type.Namespace is { } named && named.StartsWith(ours, StringComparison.Ordinal) ? named[ours.Length..].TrimStart('.') : "";
        var name = type.DeclaringType is { } outer ? $"{Name(outer)}.{type.Name}" : space.Length > 0 ? $"{space}.{type.Name}" : type.Name;
        var tick = name.IndexOf('`', StringComparison.Ordinal);
        return tick < 0 ? name : $"{name[..tick]}<{string.Join(", ", type.GetGenericArguments().Select(Name))}>";
    }
}
