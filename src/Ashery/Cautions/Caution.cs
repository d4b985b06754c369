using Ashery.Sources;

namespace Ashery.Cautions;

/// <summary>The words that go with a hazard. Stages return <see cref="Id"/>s; surfaces render the words.</summary>
/// <param name="Id">Key, e.g. <c>oxidiser</c>.</param>
/// <param name="Words">One or two short sentences, imperative.</param>
/// <param name="SourceId">Where the advice comes from.</param>
/// <param name="Provenance">How it came into the data.</param>
public sealed record Caution(string Id, string Words, string SourceId, Provenance Provenance = Provenance.FromMemory);
