using System;
using Microsoft.EntityFrameworkCore.Migrations;
using Npgsql.EntityFrameworkCore.PostgreSQL.Metadata;

#nullable disable

namespace Ashery.Records.Postgres.Migrations
{
    /// <inheritdoc />
    public partial class Records : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.CreateTable(
                name: "entry",
                columns: table => new
                {
                    Number = table.Column<long>(type: "bigint", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    Garden = table.Column<string>(type: "text", nullable: false),
                    Id = table.Column<Guid>(type: "uuid", nullable: false),
                    Revision = table.Column<int>(type: "integer", nullable: false),
                    Sequence = table.Column<long>(type: "bigint", nullable: false),
                    Kind = table.Column<string>(type: "text", nullable: false),
                    Day = table.Column<DateOnly>(type: "date", nullable: false),
                    TaskDay = table.Column<DateOnly>(type: "date", nullable: true),
                    TaskFeed = table.Column<string>(type: "text", nullable: true),
                    Body = table.Column<string>(type: "text", nullable: false),
                    Words = table.Column<string>(type: "text", nullable: false),
                    By = table.Column<string>(type: "text", nullable: false),
                    AtTicks = table.Column<long>(type: "bigint", nullable: false),
                    IsRemoved = table.Column<bool>(type: "boolean", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_entry", x => x.Number);
                });

            migrationBuilder.CreateTable(
                name: "entry_earlier",
                columns: table => new
                {
                    Garden = table.Column<string>(type: "text", nullable: false),
                    Id = table.Column<Guid>(type: "uuid", nullable: false),
                    Revision = table.Column<int>(type: "integer", nullable: false),
                    Sequence = table.Column<long>(type: "bigint", nullable: false),
                    Body = table.Column<string>(type: "text", nullable: false),
                    By = table.Column<string>(type: "text", nullable: false),
                    AtTicks = table.Column<long>(type: "bigint", nullable: false),
                    IsRemoved = table.Column<bool>(type: "boolean", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_entry_earlier", x => new { x.Garden, x.Id, x.Revision });
                });

            migrationBuilder.CreateTable(
                name: "garden_state",
                columns: table => new
                {
                    Number = table.Column<long>(type: "bigint", nullable: false)
                        .Annotation("Npgsql:ValueGenerationStrategy", NpgsqlValueGenerationStrategy.IdentityByDefaultColumn),
                    Garden = table.Column<string>(type: "text", nullable: false, defaultValue: "home"),
                    Version = table.Column<long>(type: "bigint", nullable: false),
                    By = table.Column<string>(type: "text", nullable: false),
                    SavedAtTicks = table.Column<long>(type: "bigint", nullable: false),
                    What = table.Column<string>(type: "text", nullable: false),
                    Name = table.Column<string>(type: "text", nullable: false),
                    IsDemo = table.Column<bool>(type: "boolean", nullable: false),
                    PlaceName = table.Column<string>(type: "text", nullable: false),
                    Latitude = table.Column<double>(type: "double precision", nullable: false),
                    ElevationMetres = table.Column<double>(type: "double precision", nullable: true),
                    NearCoast = table.Column<bool>(type: "boolean", nullable: false),
                    HasNormals = table.Column<bool>(type: "boolean", nullable: false),
                    Currency = table.Column<string>(type: "text", nullable: false),
                    UsUnits = table.Column<bool>(type: "boolean", nullable: false),
                    ScaleStep = table.Column<double>(type: "double precision", nullable: false),
                    DefaultScoop = table.Column<string>(type: "text", nullable: true),
                    DefaultWater = table.Column<string>(type: "text", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_garden_state", x => x.Number);
                });

            migrationBuilder.CreateTable(
                name: "entry_pot",
                columns: table => new
                {
                    Garden = table.Column<string>(type: "text", nullable: false),
                    Pot = table.Column<string>(type: "text", nullable: false),
                    Day = table.Column<DateOnly>(type: "date", nullable: false),
                    Sequence = table.Column<long>(type: "bigint", nullable: false),
                    Entry = table.Column<long>(type: "bigint", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_entry_pot", x => new { x.Garden, x.Pot, x.Day, x.Sequence });
                    table.ForeignKey(
                        name: "FK_entry_pot_entry_Entry",
                        column: x => x.Entry,
                        principalTable: "entry",
                        principalColumn: "Number",
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "bag",
                columns: table => new
                {
                    State = table.Column<long>(type: "bigint", nullable: false),
                    Position = table.Column<int>(type: "integer", nullable: false),
                    BagId = table.Column<string>(type: "text", nullable: false),
                    StockGrams = table.Column<double>(type: "double precision", nullable: true),
                    Price = table.Column<double>(type: "double precision", nullable: true),
                    SizeGrams = table.Column<double>(type: "double precision", nullable: true),
                    MaterialId = table.Column<string>(type: "text", nullable: false),
                    MaterialName = table.Column<string>(type: "text", nullable: false),
                    Kind = table.Column<string>(type: "text", nullable: false),
                    IsLiquid = table.Column<bool>(type: "boolean", nullable: false),
                    Formula = table.Column<string>(type: "text", nullable: true),
                    MolarMass = table.Column<double>(type: "double precision", nullable: true),
                    HasPure = table.Column<bool>(type: "boolean", nullable: false),
                    PureIsLimit = table.Column<bool>(type: "boolean", nullable: false),
                    Cas = table.Column<string>(type: "text", nullable: true),
                    TechnicalGrade = table.Column<string>(type: "text", nullable: true),
                    NitrogenAmmonium = table.Column<double>(type: "double precision", nullable: false),
                    NitrogenNitrate = table.Column<double>(type: "double precision", nullable: false),
                    NitrogenUrea = table.Column<double>(type: "double precision", nullable: false),
                    NitrogenOrganic = table.Column<double>(type: "double precision", nullable: false),
                    NitrogenSlow = table.Column<double>(type: "double precision", nullable: false),
                    BulkDensityMin = table.Column<double>(type: "double precision", nullable: true),
                    BulkDensityTypical = table.Column<double>(type: "double precision", nullable: true),
                    BulkDensityMax = table.Column<double>(type: "double precision", nullable: true),
                    LiquidDensity = table.Column<double>(type: "double precision", nullable: true),
                    OsmolesPerKg = table.Column<double>(type: "double precision", nullable: true),
                    CarbonToNitrogen = table.Column<double>(type: "double precision", nullable: true),
                    Moisture = table.Column<double>(type: "double precision", nullable: false),
                    CompatibilityGroup = table.Column<string>(type: "text", nullable: false),
                    Dissolves = table.Column<bool>(type: "boolean", nullable: false),
                    SourceId = table.Column<string>(type: "text", nullable: false),
                    Provenance = table.Column<string>(type: "text", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_bag", x => new { x.State, x.Position });
                    table.ForeignKey(
                        name: "FK_bag_garden_state_State",
                        column: x => x.State,
                        principalTable: "garden_state",
                        principalColumn: "Number",
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "climate_normal",
                columns: table => new
                {
                    State = table.Column<long>(type: "bigint", nullable: false),
                    Position = table.Column<int>(type: "integer", nullable: false),
                    MeanMax = table.Column<double>(type: "double precision", nullable: false),
                    MeanMin = table.Column<double>(type: "double precision", nullable: false),
                    RainMm = table.Column<double>(type: "double precision", nullable: false),
                    WetDays = table.Column<double>(type: "double precision", nullable: true),
                    WindMs = table.Column<double>(type: "double precision", nullable: true),
                    Humidity = table.Column<double>(type: "double precision", nullable: true),
                    RadiationMj = table.Column<double>(type: "double precision", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_climate_normal", x => new { x.State, x.Position });
                    table.ForeignKey(
                        name: "FK_climate_normal_garden_state_State",
                        column: x => x.State,
                        principalTable: "garden_state",
                        principalColumn: "Number",
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "feed",
                columns: table => new
                {
                    State = table.Column<long>(type: "bigint", nullable: false),
                    Position = table.Column<int>(type: "integer", nullable: false),
                    FeedId = table.Column<string>(type: "text", nullable: false),
                    Name = table.Column<string>(type: "text", nullable: false),
                    Kind = table.Column<string>(type: "text", nullable: false),
                    NitrogenAmmonium = table.Column<double>(type: "double precision", nullable: false),
                    NitrogenNitrate = table.Column<double>(type: "double precision", nullable: false),
                    NitrogenUrea = table.Column<double>(type: "double precision", nullable: false),
                    NitrogenOrganic = table.Column<double>(type: "double precision", nullable: false),
                    NitrogenSlow = table.Column<double>(type: "double precision", nullable: false),
                    SaltIndex = table.Column<double>(type: "double precision", nullable: true),
                    LimeEquivalent = table.Column<double>(type: "double precision", nullable: true),
                    BulkDensity = table.Column<double>(type: "double precision", nullable: true),
                    Dissolves = table.Column<bool>(type: "boolean", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_feed", x => new { x.State, x.Position });
                    table.ForeignKey(
                        name: "FK_feed_garden_state_State",
                        column: x => x.State,
                        principalTable: "garden_state",
                        principalColumn: "Number",
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "pot",
                columns: table => new
                {
                    State = table.Column<long>(type: "bigint", nullable: false),
                    Position = table.Column<int>(type: "integer", nullable: false),
                    PotId = table.Column<string>(type: "text", nullable: false),
                    Name = table.Column<string>(type: "text", nullable: false),
                    CropId = table.Column<string>(type: "text", nullable: false),
                    Litres = table.Column<double>(type: "double precision", nullable: false),
                    Medium = table.Column<string>(type: "text", nullable: false),
                    Stage = table.Column<string>(type: "text", nullable: false),
                    Planted = table.Column<DateOnly>(type: "date", nullable: true),
                    LastRepotted = table.Column<DateOnly>(type: "date", nullable: true),
                    Count = table.Column<int>(type: "integer", nullable: false),
                    Place = table.Column<string>(type: "text", nullable: true),
                    TopDiameter = table.Column<double>(type: "double precision", nullable: true),
                    Height = table.Column<double>(type: "double precision", nullable: true),
                    BottomDiameter = table.Column<double>(type: "double precision", nullable: true),
                    NeedsTraceElements = table.Column<bool>(type: "boolean", nullable: true),
                    LowPhosphorus = table.Column<bool>(type: "boolean", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_pot", x => new { x.State, x.Position });
                    table.ForeignKey(
                        name: "FK_pot_garden_state_State",
                        column: x => x.State,
                        principalTable: "garden_state",
                        principalColumn: "Number",
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "rule_change",
                columns: table => new
                {
                    State = table.Column<long>(type: "bigint", nullable: false),
                    RuleId = table.Column<string>(type: "text", nullable: false),
                    Setting = table.Column<string>(type: "text", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_rule_change", x => new { x.State, x.RuleId });
                    table.ForeignKey(
                        name: "FK_rule_change_garden_state_State",
                        column: x => x.State,
                        principalTable: "garden_state",
                        principalColumn: "Number",
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "scoop",
                columns: table => new
                {
                    State = table.Column<long>(type: "bigint", nullable: false),
                    Position = table.Column<int>(type: "integer", nullable: false),
                    Name = table.Column<string>(type: "text", nullable: false),
                    Litres = table.Column<double>(type: "double precision", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_scoop", x => new { x.State, x.Position });
                    table.ForeignKey(
                        name: "FK_scoop_garden_state_State",
                        column: x => x.State,
                        principalTable: "garden_state",
                        principalColumn: "Number",
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "season",
                columns: table => new
                {
                    State = table.Column<long>(type: "bigint", nullable: false),
                    Position = table.Column<int>(type: "integer", nullable: false),
                    Kind = table.Column<string>(type: "text", nullable: false),
                    FromMonth = table.Column<int>(type: "integer", nullable: false),
                    FromDay = table.Column<int>(type: "integer", nullable: false),
                    ToMonth = table.Column<int>(type: "integer", nullable: false),
                    ToDay = table.Column<int>(type: "integer", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_season", x => new { x.State, x.Position });
                    table.ForeignKey(
                        name: "FK_season_garden_state_State",
                        column: x => x.State,
                        principalTable: "garden_state",
                        principalColumn: "Number",
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "water",
                columns: table => new
                {
                    State = table.Column<long>(type: "bigint", nullable: false),
                    Position = table.Column<int>(type: "integer", nullable: false),
                    WaterId = table.Column<string>(type: "text", nullable: false),
                    Name = table.Column<string>(type: "text", nullable: false),
                    Note = table.Column<string>(type: "text", nullable: true),
                    PH = table.Column<double>(type: "double precision", nullable: true),
                    Celsius = table.Column<double>(type: "double precision", nullable: true),
                    Ec = table.Column<double>(type: "double precision", nullable: true),
                    EcUnit = table.Column<string>(type: "text", nullable: true),
                    EcCelsius = table.Column<double>(type: "double precision", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_water", x => new { x.State, x.Position });
                    table.ForeignKey(
                        name: "FK_water_garden_state_State",
                        column: x => x.State,
                        principalTable: "garden_state",
                        principalColumn: "Number",
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "bag_content",
                columns: table => new
                {
                    State = table.Column<long>(type: "bigint", nullable: false),
                    Bag = table.Column<int>(type: "integer", nullable: false),
                    OfPure = table.Column<bool>(type: "boolean", nullable: false),
                    Nutrient = table.Column<string>(type: "text", nullable: false),
                    Fraction = table.Column<double>(type: "double precision", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_bag_content", x => new { x.State, x.Bag, x.OfPure, x.Nutrient });
                    table.ForeignKey(
                        name: "FK_bag_content_bag_State_Bag",
                        columns: x => new { x.State, x.Bag },
                        principalTable: "bag",
                        principalColumns: new[] { "State", "Position" },
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "bag_figure",
                columns: table => new
                {
                    State = table.Column<long>(type: "bigint", nullable: false),
                    Bag = table.Column<int>(type: "integer", nullable: false),
                    Which = table.Column<string>(type: "text", nullable: false),
                    Value = table.Column<double>(type: "double precision", nullable: false),
                    SourceId = table.Column<string>(type: "text", nullable: false),
                    Provenance = table.Column<string>(type: "text", nullable: false),
                    Note = table.Column<string>(type: "text", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_bag_figure", x => new { x.State, x.Bag, x.Which });
                    table.ForeignKey(
                        name: "FK_bag_figure_bag_State_Bag",
                        columns: x => new { x.State, x.Bag },
                        principalTable: "bag",
                        principalColumns: new[] { "State", "Position" },
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "bag_solubility",
                columns: table => new
                {
                    State = table.Column<long>(type: "bigint", nullable: false),
                    Bag = table.Column<int>(type: "integer", nullable: false),
                    Position = table.Column<int>(type: "integer", nullable: false),
                    Celsius = table.Column<double>(type: "double precision", nullable: false),
                    GramsPerKgWater = table.Column<double>(type: "double precision", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_bag_solubility", x => new { x.State, x.Bag, x.Position });
                    table.ForeignKey(
                        name: "FK_bag_solubility_bag_State_Bag",
                        columns: x => new { x.State, x.Bag },
                        principalTable: "bag",
                        principalColumns: new[] { "State", "Position" },
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "bag_spread",
                columns: table => new
                {
                    State = table.Column<long>(type: "bigint", nullable: false),
                    Bag = table.Column<int>(type: "integer", nullable: false),
                    Nutrient = table.Column<string>(type: "text", nullable: false),
                    Min = table.Column<double>(type: "double precision", nullable: false),
                    Typical = table.Column<double>(type: "double precision", nullable: false),
                    Max = table.Column<double>(type: "double precision", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_bag_spread", x => new { x.State, x.Bag, x.Nutrient });
                    table.ForeignKey(
                        name: "FK_bag_spread_bag_State_Bag",
                        columns: x => new { x.State, x.Bag },
                        principalTable: "bag",
                        principalColumns: new[] { "State", "Position" },
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "bag_word",
                columns: table => new
                {
                    State = table.Column<long>(type: "bigint", nullable: false),
                    Bag = table.Column<int>(type: "integer", nullable: false),
                    List = table.Column<string>(type: "text", nullable: false),
                    Position = table.Column<int>(type: "integer", nullable: false),
                    Text = table.Column<string>(type: "text", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_bag_word", x => new { x.State, x.Bag, x.List, x.Position });
                    table.ForeignKey(
                        name: "FK_bag_word_bag_State_Bag",
                        columns: x => new { x.State, x.Bag },
                        principalTable: "bag",
                        principalColumns: new[] { "State", "Position" },
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "feed_content",
                columns: table => new
                {
                    State = table.Column<long>(type: "bigint", nullable: false),
                    Feed = table.Column<int>(type: "integer", nullable: false),
                    Nutrient = table.Column<string>(type: "text", nullable: false),
                    Fraction = table.Column<double>(type: "double precision", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_feed_content", x => new { x.State, x.Feed, x.Nutrient });
                    table.ForeignKey(
                        name: "FK_feed_content_feed_State_Feed",
                        columns: x => new { x.State, x.Feed },
                        principalTable: "feed",
                        principalColumns: new[] { "State", "Position" },
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "feed_part",
                columns: table => new
                {
                    State = table.Column<long>(type: "bigint", nullable: false),
                    Feed = table.Column<int>(type: "integer", nullable: false),
                    MaterialId = table.Column<string>(type: "text", nullable: false),
                    Share = table.Column<double>(type: "double precision", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_feed_part", x => new { x.State, x.Feed, x.MaterialId });
                    table.ForeignKey(
                        name: "FK_feed_part_feed_State_Feed",
                        columns: x => new { x.State, x.Feed },
                        principalTable: "feed",
                        principalColumns: new[] { "State", "Position" },
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "scoop_calibration",
                columns: table => new
                {
                    State = table.Column<long>(type: "bigint", nullable: false),
                    Scoop = table.Column<int>(type: "integer", nullable: false),
                    MaterialId = table.Column<string>(type: "text", nullable: false),
                    Min = table.Column<double>(type: "double precision", nullable: false),
                    Typical = table.Column<double>(type: "double precision", nullable: false),
                    Max = table.Column<double>(type: "double precision", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_scoop_calibration", x => new { x.State, x.Scoop, x.MaterialId });
                    table.ForeignKey(
                        name: "FK_scoop_calibration_scoop_State_Scoop",
                        columns: x => new { x.State, x.Scoop },
                        principalTable: "scoop",
                        principalColumns: new[] { "State", "Position" },
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "water_line",
                columns: table => new
                {
                    State = table.Column<long>(type: "bigint", nullable: false),
                    Water = table.Column<int>(type: "integer", nullable: false),
                    Position = table.Column<int>(type: "integer", nullable: false),
                    Name = table.Column<string>(type: "text", nullable: false),
                    Value = table.Column<double>(type: "double precision", nullable: false),
                    Unit = table.Column<string>(type: "text", nullable: true),
                    Below = table.Column<bool>(type: "boolean", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_water_line", x => new { x.State, x.Water, x.Position });
                    table.ForeignKey(
                        name: "FK_water_line_water_State_Water",
                        columns: x => new { x.State, x.Water },
                        principalTable: "water",
                        principalColumns: new[] { "State", "Position" },
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateIndex(
                name: "IX_entry_Garden_Day_Sequence",
                table: "entry",
                columns: new[] { "Garden", "Day", "Sequence" });

            migrationBuilder.CreateIndex(
                name: "IX_entry_Garden_Id",
                table: "entry",
                columns: new[] { "Garden", "Id" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_entry_Garden_Kind_Day_Sequence",
                table: "entry",
                columns: new[] { "Garden", "Kind", "Day", "Sequence" });

            migrationBuilder.CreateIndex(
                name: "IX_entry_Garden_Sequence",
                table: "entry",
                columns: new[] { "Garden", "Sequence" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_entry_Garden_TaskDay",
                table: "entry",
                columns: new[] { "Garden", "TaskDay" },
                filter: "\"TaskDay\" IS NOT NULL");

            migrationBuilder.CreateIndex(
                name: "IX_entry_earlier_Garden_Sequence",
                table: "entry_earlier",
                columns: new[] { "Garden", "Sequence" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_entry_pot_Entry",
                table: "entry_pot",
                column: "Entry");

            migrationBuilder.CreateIndex(
                name: "IX_garden_state_Garden_Version",
                table: "garden_state",
                columns: new[] { "Garden", "Version" },
                unique: true);

            // Before each word stands the garden's key, so that a search reads the words of one garden only, however many there are. Words come cut by
            // Ashery and need no dictionary.
            migrationBuilder.Sql("""
                ALTER TABLE entry ADD COLUMN "Search" tsvector GENERATED ALWAYS AS (
                    CASE WHEN "Words" = '' THEN ''::tsvector
                    ELSE array_to_tsvector(string_to_array("Garden" || '/' || replace("Words", ' ', ' ' || "Garden" || '/'), ' ')) END) STORED;
                """);
            migrationBuilder.Sql("CREATE INDEX \"IX_entry_Search\" ON entry USING gin (\"Search\");");
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "bag_content");

            migrationBuilder.DropTable(
                name: "bag_figure");

            migrationBuilder.DropTable(
                name: "bag_solubility");

            migrationBuilder.DropTable(
                name: "bag_spread");

            migrationBuilder.DropTable(
                name: "bag_word");

            migrationBuilder.DropTable(
                name: "climate_normal");

            migrationBuilder.DropTable(
                name: "entry_earlier");

            migrationBuilder.DropTable(
                name: "entry_pot");

            migrationBuilder.DropTable(
                name: "feed_content");

            migrationBuilder.DropTable(
                name: "feed_part");

            migrationBuilder.DropTable(
                name: "pot");

            migrationBuilder.DropTable(
                name: "rule_change");

            migrationBuilder.DropTable(
                name: "scoop_calibration");

            migrationBuilder.DropTable(
                name: "season");

            migrationBuilder.DropTable(
                name: "water_line");

            migrationBuilder.DropTable(
                name: "bag");

            migrationBuilder.DropTable(
                name: "entry");

            migrationBuilder.DropTable(
                name: "feed");

            migrationBuilder.DropTable(
                name: "scoop");

            migrationBuilder.DropTable(
                name: "water");

            migrationBuilder.DropTable(
                name: "garden_state");
        }
    }
}
