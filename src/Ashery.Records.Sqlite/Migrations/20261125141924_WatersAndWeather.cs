using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Ashery.Records.Sqlite.Migrations
{
    /// <inheritdoc />
    public partial class WatersAndWeather : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.AddColumn<string>(
                name: "DefaultWater",
                table: "garden_state",
                type: "TEXT",
                nullable: true);

            migrationBuilder.AddColumn<double>(
                name: "ElevationMetres",
                table: "garden_state",
                type: "REAL",
                nullable: true);

            migrationBuilder.AddColumn<double>(
                name: "Humidity",
                table: "climate_normal",
                type: "REAL",
                nullable: true);

            migrationBuilder.AddColumn<double>(
                name: "RadiationMj",
                table: "climate_normal",
                type: "REAL",
                nullable: true);

            migrationBuilder.AddColumn<double>(
                name: "WetDays",
                table: "climate_normal",
                type: "REAL",
                nullable: true);

            migrationBuilder.AddColumn<double>(
                name: "WindMs",
                table: "climate_normal",
                type: "REAL",
                nullable: true);

            migrationBuilder.CreateTable(
                name: "water",
                columns: table => new
                {
                    State = table.Column<long>(type: "INTEGER", nullable: false),
                    Position = table.Column<int>(type: "INTEGER", nullable: false),
                    WaterId = table.Column<string>(type: "TEXT", nullable: false),
                    Name = table.Column<string>(type: "TEXT", nullable: false),
                    Note = table.Column<string>(type: "TEXT", nullable: true),
                    PH = table.Column<double>(type: "REAL", nullable: true),
                    Celsius = table.Column<double>(type: "REAL", nullable: true),
                    Ec = table.Column<double>(type: "REAL", nullable: true),
                    EcUnit = table.Column<string>(type: "TEXT", nullable: true),
                    EcCelsius = table.Column<double>(type: "REAL", nullable: true)
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
                name: "water_line",
                columns: table => new
                {
                    State = table.Column<long>(type: "INTEGER", nullable: false),
                    Water = table.Column<int>(type: "INTEGER", nullable: false),
                    Position = table.Column<int>(type: "INTEGER", nullable: false),
                    Name = table.Column<string>(type: "TEXT", nullable: false),
                    Value = table.Column<double>(type: "REAL", nullable: false),
                    Unit = table.Column<string>(type: "TEXT", nullable: true),
                    Below = table.Column<bool>(type: "INTEGER", nullable: false)
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
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "water_line");

            migrationBuilder.DropTable(
                name: "water");

            migrationBuilder.DropColumn(
                name: "DefaultWater",
                table: "garden_state");

            migrationBuilder.DropColumn(
                name: "ElevationMetres",
                table: "garden_state");

            migrationBuilder.DropColumn(
                name: "Humidity",
                table: "climate_normal");

            migrationBuilder.DropColumn(
                name: "RadiationMj",
                table: "climate_normal");

            migrationBuilder.DropColumn(
                name: "WetDays",
                table: "climate_normal");

            migrationBuilder.DropColumn(
                name: "WindMs",
                table: "climate_normal");
        }
    }
}
