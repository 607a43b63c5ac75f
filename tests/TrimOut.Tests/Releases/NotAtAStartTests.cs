using System.Reflection;
using System.Xml.Linq;
using TrimOut.Testing;

namespace TrimOut.Tests.Releases;

/// <summary>What the native build takes out of a library is there to be taken out: in another version of it the compiler would leave it in.</summary>
public class NotAtAStartTests
{
    private const BindingFlags Any = BindingFlags.Static | BindingFlags.Instance | BindingFlags.NonPublic | BindingFlags.Public;

    private static readonly XElement Root =
        XDocument.Load(Path.Combine(Repository.Root, "src", "TrimOut", "Properties", "PublishProfiles", "NotAtAStart.xml")).Root!;

    public static IEnumerable<object[]> Methods => Root.Elements("assembly")
        .SelectMany(a => a.Elements("type"), (a, t) => (Assembly: (string)a.Attribute("fullname")!, Type: t))
        .SelectMany(t => t.Type.Elements("method"), object[] (t, m) =>
            [t.Assembly, (string)t.Type.Attribute("fullname")!, (string)m.Attribute("signature")!]);

    [Theory]
    [MemberData(nameof(Methods))]
    public void TheLibraryHasIt(string assembly, string type, string signature) => Assert.Contains(signature,
        Assembly.Load(assembly).GetType(type, throwOnError: true)!.GetMethods(Any)
            .Select(m => $"{m.ReturnType.FullName} {m.Name}({string.Join(",", m.GetParameters().Select(p => p.ParameterType.FullName))})"));
}
