using TrimOut.Core;
using TrimOut.Core.Kits;

namespace TrimOut.Screens.Shell;

/// <summary>A file of the user's kit folder.</summary>
/// <param name="File">Its name, without the folder.</param>
/// <param name="Part">The part that it holds, or why it can't be read.</param>
/// <param name="Older">Whether another text of the part took its place.</param>
public sealed record KeptPart(string File, Result<PartSheet> Part, bool Older = false);
