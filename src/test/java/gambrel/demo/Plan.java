package gambrel.demo;

import java.util.List;
import java.util.stream.Stream;

/**
 * The quarter's bodies. Columns: id (its letter tells the species), class, killed, hot weight in
 * 100 g, dressing in thousandths, days cut, style, traits, age in months, fat in mm, owner, head,
 * tags, mark.
 */
final class Plan {
  private static final String CATTLE =
      """
      B0701|steer |07-06|2386|592|07-15      |tbone   |lr saus bones|22|9|ashdown|1||Blue 0417
      B0702|heifer|07-06|2162|588|07-16 07-17|boneless|half dog|20|10||1||White 31
      B0703|cow   |07-06|2618|561|07-08      |mincer  |wrongbody|84|6|dunmore|1||Orange 112
      B0704|steer |07-13|2044|596|07-22      |counter ||18|8|shop|1||Yellow 2208
      B0705|steer |07-13|2462|601|07-23      |tbone   |lr|24|11||1||Green 55
      B0706|heifer|07-20|1884|579|07-29      |counter |guess|16|7|ivers|1||Brand TI near rump
      B0707|steer |07-21|2524|604|08-12      |boneless|lr aged21 bones|25|14|jellicoe|1||Blue 0388
      B0708|heifer|07-20|2104|585|07-30      |boneless|tag dog|19|9|kettle|1|4412|NLIS tag ends 4412
      B0709|cow   |07-27|2482|557|07-29      |mincer  |rawconflict|62|5|lomax|1||Orange 87
      B0710|steer |07-27|2326|593|08-06      |tbone   |lr voidhot|21|9|mulvane|1||White 140
      B0711|steer |08-03|2408|598|08-13      |plain   |noaged|23|10|nguyen|1||Red 9
      B0712|heifer|08-03|2062|590|08-11      |counter ||17|8|shop|1||Yellow 2231
      B0713|steer |08-03|2286|0  |08-14      |plain   |spilt|20|8|oxley|1||Brand O near rump
      B0714|steer |08-10|2228|600|08-19      |tbone   |quarters|20|9|wojcik|1||Blue 0502
      B0715|heifer|08-10|1986|584|08-20      |boneless|friend bruise|18|7||1||Green 61
      B0716|steer |08-17|2564|607|08-26      |boneless|lr block saus|26|13|tolley|1||White 77
      B0717|heifer|08-17|2142|587|08-27      |tbone   |bones oldtare|19|9|ashdown|1||Blue 0419
      B0718|heifer|08-17|1846|582|08-28      |counter |voidbin|17|8|shop|1||Yellow 2249
      B0719|steer |08-24|2362|595|09-02      |boneless|lr dog|22|10||1||White 33
      B0720|steer |08-24|2084|591|09-03      |counter |tag|19|8|fenwick|1|5127|NLIS tag ends 5127
      B0721|heifer|08-31|2026|586|09-09      |tbone   |mixed|18|9|gatley|1||Red 40
      B0722|steer |08-31|2444|602|09-09      |boneless|mixed|24|11|hirsch|1||Green 70
      B0723|heifer|08-31|1922|583|09-10      |counter ||16|7|shop|1||Yellow 2260
      B0724|steer |09-07|2306|594|09-16      |plain   |lr badcode|22|10|ivers|1||Brand TI near rump
      B0725|steer |09-07|2188|0  |09-17      |tbone   |lost|25|12|jellicoe|1||Blue 0391
      B0726|heifer|09-14|2122|588|09-23      |plain   |lr twice|18|9|kettle|1||Red 12
      B0727|steer |09-14|2264|0  |09-24      |tbone   |unlisted|21|10||1||White 150
      B0728|steer |09-21|2342|597|09-30      |boneless|lr partcut|24|11|mulvane|1||White 151
      B0729|heifer|09-21|2048|589|09-30      |plain   ||17|8|quaife|1||Green 82
      B0730|steer |09-28|2418|596|           |tbone   |lr|23|10|ashdown|1||Blue 0422
      """;

  private static final String SMALL_STOCK =
      """
      L0401|lamb  |07-14|226 |515|07-17|lamb    ||8||ashdown|1||Ear notch left
      L0402|lamb  |07-21|1288|512|07-24|chops   ||8||lomax|6||Red tags 1-6
      L0403|lamb  |07-28|212 |509|07-31|chops   ||7||tibbett|1||
      L0404|lamb  |07-28|238 |520|07-31|lamb    ||9||mulvane|1||Blue 3
      L0405|hogget|08-11|258 |511|     |whole   ||14||corrigan|1||Black face
      L0406|lamb  |08-11|220 |0  |08-14|chops   |badnumber|8||quaife|1||Green 14
      L0407|lamb  |08-18|230 |518|08-21|lamb    ||8|||1||Yellow 21
      L0408|lamb  |08-25|646 |514|08-28|chops   |losttag|8||tolley|3||White 1-3
      L0409|lamb  |09-01|216 |512|09-04|lamb    ||7||wojcik|1||
      L0410|lamb  |09-01|234 |0  |09-04|chops   ||8||shop|1||Yellow 2255
      L0411|lamb  |09-08|222 |516|09-11|lamb    ||8||nguyen|1||Red 11
      L0412|lamb  |09-15|228 |519|09-18|chops   |badkey|9||oxley|1||Ear notch right
      L0413|lamb  |09-29|224 |513|     |lamb    ||8||kettle|1||Red 15
      G0101|kid   |08-04|182 |476|08-06|goat    ||7||osei|1||Brown wether
      D0051|      |08-22|412 |0  |08-28|game    ||||rennie|1||Fallow doe
      """;

  private static final String PIGS =
      """
      P0201|porker|07-07|624 |712|07-09|fresh   |saus|5|10|beale|1||Slap 14
      P0202|baconer|07-14|838 |724|07-16|cured   |brine bacon|6|14|dunmore|1||Slap 15
      P0203|porker|07-21|652 |715|07-23|fresh   |trotters|5|10|gatley|1||
      P0204|baconer|07-28|864 |726|07-30|cured   ||7|15|hirsch|1||Slap 21
      P0205|porker|08-04|618 |709|08-06|fresh   |saus|5|9||1||Slap 22
      P0206|baconer|08-11|812 |0  |08-13|fresh   |saus|6|13|shop|1||
      P0207|baconer|08-18|848 |722|08-20|cured   |brine bacon|6|14|lomax|1||Slap 30
      P0208|porker|08-25|636 |711|08-27|fresh   ||5|10|ivers|1||Slap 31
      P0209|porker|09-01|644 |714|09-03|fresh   |saus trotters|5|11|ashdown|1||Slap 33
      P0210|baconer|09-08|826 |720|09-10|cured   |brine bacon|6|13|tibbett|1||Slap 36
      P0211|porker|09-15|628 |713|09-17|fresh   |conflict|5|10|eckhart|1||Slap 37
      P0212|baconer|09-22|872 |727|09-24|cured   |bacon indue|7|16|fenwick|1||Slap 40
      """;

  private Plan() {}

  /** All of them, cattle first. */
  static List<Beast> beasts() {
    return Stream.of(CATTLE, SMALL_STOCK, PIGS).flatMap(String::lines).map(Beast::of).toList();
  }
}
