create view blank_shelf as select tag from blank_now;
