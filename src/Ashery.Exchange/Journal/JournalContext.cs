using System.Text.Json.Serialization;
using Ashery.Journal;

namespace Ashery.Exchange.Journal;

/// <summary>Generated descriptions of the entries.</summary>
[JsonSourceGenerationOptions(GenerationMode = JsonSourceGenerationMode.Metadata)]
[JsonSerializable(typeof(Entry))]
[JsonSerializable(typeof(FeedGiven))]
[JsonSerializable(typeof(TaskSkipped))]
[JsonSerializable(typeof(TaskMoved))]
[JsonSerializable(typeof(Measured))]
[JsonSerializable(typeof(PlantEvent))]
[JsonSerializable(typeof(Sighting))]
[JsonSerializable(typeof(WeatherNoted))]
[JsonSerializable(typeof(Photograph))]
[JsonSerializable(typeof(BagBought))]
[JsonSerializable(typeof(StockCounted))]
[JsonSerializable(typeof(BatchMade))]
[JsonSerializable(typeof(Discarded))]
[JsonSerializable(typeof(KeptDocument))]
internal sealed partial class JournalContext : JsonSerializerContext;
