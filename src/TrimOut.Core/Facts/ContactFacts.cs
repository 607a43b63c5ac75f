using TrimOut.Core.Houses;
using TrimOut.Core.Phases;

namespace TrimOut.Core.Facts;

/// <summary>What is known about somebody who has a part in the job.</summary>
public static class ContactFacts
{
    private static readonly Declare Of = new(ItemKind.Contact);

    public static readonly Fact<string> Name = Of.Text("name", "Contact", "Who it is: a person, a firm, or both.", null, 60);
    public static readonly Fact<ContactPart> Part = Of.Choice<ContactPart>("part", "Part in the job", "What they do in this job.");
    public static readonly Fact<string> Telephone = Of.Telephone("telephone", "Telephone", "The number that they answer.");
    public static readonly Fact<YesNo> AfterHandover = Of.Choice<YesNo>("after-handover", "Call after handover",
        "Whether the owner calls them when something fails: then they stand in the binder.", Phase.Handover);
    public static readonly Fact<string> Note = Of.Text("note", "Note", "When they can be reached, or what they bring.", null, Declare.Note);

    internal static readonly Fact[] All = [Name, Part, Telephone, AfterHandover, Note];
}
