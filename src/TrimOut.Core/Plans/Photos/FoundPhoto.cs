using System.Collections.Immutable;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;

namespace TrimOut.Core.Plans.Photos;

/// <summary>The label of a cable that is seen in a picture.</summary>
/// <param name="Tag">The tag of the unit on it.</param>
/// <param name="House">The mark of the house that it was printed for, as <see cref="HouseMark"/> gives it; null on one that says none.</param>
public sealed record SeenLabel(string Tag, string? House);

/// <summary>A picture that was found in a folder or on a stick, with what its file says.</summary>
/// <param name="Name">The name of its file, without the folder.</param>
/// <param name="Taken">When it was taken, by the camera's clock where it was taken; null where the file does not say.</param>
/// <param name="Labels">The labels that are seen in it, each once; none where none could be read.</param>
public sealed record FoundPhoto(string Name, DateTime? Taken, ImmutableArray<SeenLabel> Labels)
{
    /// <summary>
    /// How far the camera's clock was from UTC; null where the file does not say, and the clock of whoever marked steps is taken for the same.
    /// </summary>
    public TimeSpan? FromUtc { get; init; }

    /// <summary>Why it can't be shown, as it ends a sentence; null where it can.</summary>
    public string? Unreadable { get; init; }

    /// <summary>The path under which the house has the same picture; null where it has not.</summary>
    public string? TakenInAs { get; init; }

    /// <summary>The file before it in the same folder that is the same picture; null where none is.</summary>
    public string? SameAs { get; init; }
}

/// <summary>What shows where a picture belongs, the surest first.</summary>
public enum PlacedBy
{
    /// <summary>Somebody said so.</summary>
    Hand,

    /// <summary>A label of one cable is seen in it.</summary>
    Label,

    /// <summary>One tag stands in the name of its file.</summary>
    Name,

    /// <summary>It was taken while one unit was worked on: that is offered, and not done.</summary>
    Time,

    /// <summary>Nothing: it is not placed.</summary>
    Nothing,
}

/// <summary>Where a picture is noted.</summary>
/// <param name="Of">The unit, or the window of several units.</param>
/// <param name="Holder">The item that has the detail: the unit, its home run or the window.</param>
/// <param name="Fact">The detail.</param>
/// <param name="Step">The step that asks for the picture; null where none does.</param>
/// <param name="Phase">The phase that it shows.</param>
public sealed record PhotoPlace(Subject Of, Item Holder, Fact<string> Fact, Step? Step, Phase Phase)
{
    /// <summary>What it shows, in a few words.</summary>
    public string Shows => Step is not null ? $"{Step.Label}{(Marks ? "" : ", not marked")}" : $"{Phase.Full()}, the {(Of is Unit ? "unit" : "window")}";

    /// <summary>Whether it marks the step that asks for it; one whose own time speaks against that is noted there, and marks nothing.</summary>
    public bool Marks { get; init; } = true;
}

/// <summary>A picture with where it belongs.</summary>
/// <param name="Photo">The picture.</param>
/// <param name="Place">Where; null where that can't be told.</param>
/// <param name="By">What shows it.</param>
/// <param name="Why">What shows it, or why it is not placed, in words.</param>
public sealed record PhotoPlacement(FoundPhoto Photo, PhotoPlace? Place, PlacedBy By, string Why)
{
    /// <summary>Whether something speaks against it, or too little for it, so that it is offered and not done.</summary>
    public bool IsDoubtful { get; init; }

    /// <summary>Whether it is taken in without a further word: what only its time shows, and what is doubtful, is offered.</summary>
    public bool IsSure => Place is not null && (By == PlacedBy.Hand || (By != PlacedBy.Time && !IsDoubtful));
}
